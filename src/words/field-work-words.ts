/** Label and help of each cell that tells of the job, place, people, money and what happened. */
import type { FieldWords } from './field-words.ts'

const photo = ['Photo', 'Number or name of the photo, so that it is found again in the file.'] as const

const work: FieldWords = {
  job: {
    name: ['Name of the job', 'Stands in the list of jobs and on the papers.'],
    boatName: ['Name of the boat', 'As it is lettered on her.'],
    owner: ['Owner', 'Whom the quote is for.'],
    shop: ['Shop', 'Who does the work; stands on the papers.'],
    units: ['Units', 'For screen and paper; boxes take either.'],
    locale: ['Language of figures', 'How numbers and dates are written, such as en-GB.'],
    start: ['First day', 'No work is planned before it.'],
    launch: ['Wanted launch', 'The day she should be afloat; the plan says whether it can be.'],
    finish: [
      'Finish',
      'How good it has to look: decides the distance it is judged from and the sanding between coats.',
    ],
    finishWords: ['Finish in words', 'As agreed with the owner; it stands on the quote.'],
  },
  place: {
    name: ['Place', 'What the yard or shed is called.'],
    shelter: ['Shelter', 'What is over the boat: decides wind, dew and warmth at the hull.'],
    latitude: ['Latitude', 'North is plus, south minus; for sun and dew.'],
    longitude: ['Longitude', 'East is plus, west minus; for sun and dew.'],
    timeZone: ['Time zone', 'Of the place, such as Europe/Paris.'],
    bowBearing: ['Bow points to', 'Clockwise from north: tells which side the sun warms first.'],
    vocRules: [
      'Limits for solvent',
      'Whose limits are shown beside what you put on; which hold for you is for local law to say.',
    ],
    lamps: ['Lamps', 'Whether the work is lit after dark; left out, it is in a shed and nowhere else.'],
    eveningStop: [
      'Evening stop',
      'In the open no paint goes on after it, by the clock of the place; left out, the last two hours before sunset are a risk.',
    ],
    heater: ['Heater', 'An open flame gives off water, and has no place near solvent.'],
  },
  shed: {
    length: ['Length of the shed', 'Inside. Left out, it is 4 m more than the boat, assumed.'],
    width: ['Width of the shed', 'Inside. Left out, it is 4 m more than the boat, assumed.'],
    height: ['Height of the shed', 'Inside, between eaves and ridge. Left out, 5 m, assumed.'],
    walls: ['Walls and roof', 'Plain sheet, or with some 50 mm of insulation: how fast the heat leaves.'],
    heatTo: ['Kept at', 'What the thermostat of a heated shed is set to.'],
    heatFrom: ['Warm from', 'By the clock of the place. Left out, it is kept warm all day and night.'],
    heatUntil: ['Warm until', 'By the clock of the place.'],
    heatToNight: ['Kept at otherwise', 'For the rest of the day; left out, the heater is off then.'],
    heaterPower: [
      'Power of the heater',
      'The most it gives, off its plate. Left out, it is never too small.',
    ],
    fuel: ['Burns', 'What an open flame burns: its water goes into the air of the shed.'],
    doorFrom: ['Door open from', 'Each day, by the clock of the place.'],
    doorUntil: ['Door open until', 'Each day, by the clock of the place.'],
    floorWater: ['Water on the floor', 'What dries off it in a day when it is damped against dust.'],
    floorAt: ['Floor wetted at', 'By the clock of the place. Left out, at 08:00.'],
  },
  people: {
    name: ['Name', 'As it stands in the days.'],
    role: ['Role', 'Whose rate counts for their hours.'],
    trainedUntil: ['Trained until', 'How long their training in isocyanates holds.'],
    sensitised: ['Sensitised', 'To isocyanates: never again near two-part paint.'],
  },
  shifts: {
    person: ['Who', 'The person whose hours these are.'],
    days: ['Days', 'Days of the week, such as mon-fri.'],
    from: ['From', 'Begin of the shift, by the clock of the place.'],
    until: ['Until', 'End of the shift, by the clock of the place.'],
  },
  closures: {
    person: ['Who', 'Leave it out when nobody works.'],
    from: ['First day', 'From this day on.'],
    until: ['Last day', 'Up to and with this day.'],
    why: ['Why', 'Holiday, yard closed, another boat.'],
  },
  weather: {
    file: ['Weather file', 'The file that lies beside the job.'],
    hash: ['Mark of the weather', 'Written by the program: tells one weather from another.'],
    typicalFile: [
      'File of the typical year',
      'A year of a station near the boat that goes on where the forecast ends.',
    ],
    typicalHash: ['Mark of the typical year', 'Written by the program: tells one year from another.'],
    read: ['Read', 'Written by the program: when the file was read, or the forecast was asked for.'],
    logger: ['File of a logger', 'A few days from the shed or under the cover; lies beside the job.'],
    loggerHash: ['Mark of the logger', 'Written by the program: tells one file of a logger from another.'],
  },
  changes: {
    name: ['What is to be done', 'As it stands on the change order.'],
    found: ['What was found', 'The reason, for whoever signs it.'],
    zone: ['Zone', 'The part of the boat it is on.'],
    hours: ['More hours', 'Person-hours on top of the quote.'],
    sheet: ['Material', 'The product it takes.'],
    volume: ['How much of it', 'Mixed, on top of the quote.'],
    photo,
    date: ['Found on', 'The day it was found.'],
  },
}

const money: FieldWords = {
  terms: {
    currency: ['Currency', 'Three letters or a sign, such as EUR or £; all prices are in it.'],
    margin: ['Margin', 'Added to materials and consumables, not to hours.'],
    tax: ['Tax', 'Sales tax or VAT on the net sum.'],
    deposit: ['Deposit', 'Share of the total that is due on signing.'],
    quoteNumber: ['Number of the quote', 'Stands on the quote and its change orders.'],
    sundries: [
      'Sundries, one sum',
      'For discs, tape, rollers, rags and the like; then they need no prices of their own.',
    ],
    signed: ['Signed for', 'The total with tax on the quote the owner signed: the plan is held against it.'],
    signedOn: ['Signed on', 'The date beside the signature.'],
    validDays: ['Quote holds for', 'Days from the date of the quote.'],
    exclusions: ['Not included', 'What the quote does not hold, in your own words.'],
  },
  rates: {
    role: ['Role', 'Whose hour this is.'],
    hourly: ['One hour', 'What you charge for it.'],
  },
  prices: {
    pack: ['Pack', 'Which of the packs.'],
    price: ['One pack', 'What you pay for it.'],
  },
  consumablePrices: {
    consumable: ['Consumable', 'What is used up.'],
    price: ['Price of one', 'For a piece, metre or litre, as it is sold.'],
  },
  unitPrices: {
    name: ['Kind of damage', 'What may still come to light.'],
    per: ['For each', 'Such as 0.1 m² or one hole.'],
    price: ['Price', 'For one such unit.'],
  },
  costs: {
    name: ['What for', 'Crane, storage, waste and the like.'],
    amount: ['How much', 'The whole sum, before tax.'],
  },
}

const log: FieldWords = {
  log: {
    at: ['When', 'Date, time and offset, such as 2027-04-14T09:30+02:00.'],
    kind: ['What it says', 'Not done takes back an earlier done; a mishap says that something went wrong.'],
    step: ['Step', 'The step of work it is about.'],
    mishap: ['What went wrong', 'From the list of mishaps.'],
    film: ['The coat', 'It stands, was wiped off wet, or is sanded off once dry.'],
    grit: ['Sanded with', 'Before anything more goes on; left out, the grit that is planned for it.'],
    share: [
      'How much of it',
      'Share of the surface that is sanded where the coat stands; left out, all of it.',
    ],
    wait: ['Least wait', 'Before it is sanded or coated again; the clocks of the product hold besides.'],
    until: ['Until', 'When the rain stopped; left out, within the hour.'],
    rain: ['Rain', 'How much fell in all; nothing where it stayed dry after all.'],
    by: ['Who', 'Names, as people write them.'],
    text: ['In your words', 'What happened, as you would tell it.'],
    air: ['Air', 'Temperature read on the spot.'],
    humidity: ['Humidity', 'Read on the spot.'],
    skin: ['Skin', 'Temperature of the surface itself, read on the spot.'],
    readAt: ['Read where', 'Which side of the boat; left out, it counts only as far as it is colder.'],
    batch: ['Batches', 'Their numbers, as they stand on the cans.'],
    used: ['Quantity used', 'Mixed paint that the coat took, thinner in it.'],
    wetFilm: ['Wet film', 'Read off the gauge, thinner in it.'],
    corrects: ['In place of', 'Entries that it takes the place of: they stay written and count no more.'],
    written: ['Written', 'Where that was later than what the entry tells of.'],
  },
}

export const workFieldWords: FieldWords = { ...work, ...money, ...log }
