/** Where, when and by whom the work is done, and what was found on the way. */
import { amount, room, setPoint, work } from './bounds.ts'
import type { Sections } from './field.ts'

export const yardFields = {
  place: {
    shape: 'one',
    doc: 'Where the boat stands.',
    fields: {
      name: { kind: 'text', doc: 'What the place is called.' },
      shelter: {
        kind: 'choice',
        choices: ['open', 'cover', 'open-sided shed', 'shed', 'heated shed'],
        need: 'required',
        standIn: 'open',
        doc: 'What is over the boat.',
      },
      latitude: {
        kind: 'quantity',
        dimension: 'angle',
        sign: 'any',
        least: -Math.PI / 2,
        most: Math.PI / 2,
        doc: 'North is plus.',
      },
      longitude: {
        kind: 'quantity',
        dimension: 'angle',
        sign: 'any',
        least: -Math.PI,
        most: Math.PI,
        doc: 'East is plus.',
      },
      timeZone: {
        kind: 'text',
        pattern: '[A-Za-z]+(/[A-Za-z0-9_+-]+){0,2}',
        example: 'Europe/Paris',
        need: 'required',
        standIn: 'UTC',
        doc: 'Name in the time zone database, for example Europe/Paris.',
      },
      bowBearing: {
        kind: 'quantity',
        dimension: 'angle',
        least: 0,
        most: 2 * Math.PI,
        doc: 'Where the bow points, clockwise from north.',
      },
      vocRules: {
        kind: 'choice',
        choices: ['none', 'Hong Kong', 'San Joaquin Valley', 'US guideline', 'Ventura County'],
        doc: 'Whose limits for solvent in coatings are shown; which hold is for local law to say.',
      },
      lamps: {
        kind: 'yesno',
        doc: 'Lamps light the work after dark; left out, they do in a shed and nowhere else.',
      },
      eveningStop: {
        kind: 'timeOfDay',
        doc: 'In the open no paint goes on after this, local time; left out, the last 2 h before sunset are a risk.',
      },
      heater: {
        kind: 'choice',
        choices: ['none', 'electric', 'vented', 'unvented flame'],
        doc: 'What heats it.',
      },
    },
  },
  shed: {
    shape: 'one',
    doc: 'The shed that the boat stands in, its heater, doors and floor; of no use anywhere else.',
    fields: {
      length: {
        kind: 'quantity',
        dimension: 'length',
        ...room,
        doc: 'Inside; left out, 4 m longer than the boat.',
      },
      width: {
        kind: 'quantity',
        dimension: 'length',
        ...room,
        doc: 'Inside; left out, 4 m wider than the boat.',
      },
      height: { kind: 'quantity', dimension: 'length', ...room, doc: 'Inside, on average; left out, 5 m.' },
      walls: {
        kind: 'choice',
        choices: ['sheet', 'insulated'],
        doc: 'How well walls and roof keep heat; left out, plain sheet.',
      },
      heatTo: {
        kind: 'quantity',
        dimension: 'temperature',
        ...setPoint,
        doc: 'What a heated shed is kept at; left out, 15 °C.',
      },
      heatFrom: {
        kind: 'timeOfDay',
        doc: 'From when it is kept so, local time; left out, all day and night.',
      },
      heatUntil: { kind: 'timeOfDay', doc: 'Until when.' },
      heatToNight: {
        kind: 'quantity',
        dimension: 'temperature',
        ...setPoint,
        doc: 'What it is kept at for the rest of the day; left out, the heater is off.',
      },
      heaterPower: {
        kind: 'quantity',
        dimension: 'power',
        sign: 'positive',
        most: 1e6,
        doc: 'The most that the heater gives; left out, it is never too small.',
      },
      fuel: {
        kind: 'choice',
        choices: ['gas', 'kerosene'],
        doc: 'What an unvented flame burns; left out, gas.',
      },
      doorFrom: { kind: 'timeOfDay', doc: 'From when the door stands open each day, local time.' },
      doorUntil: { kind: 'timeOfDay', doc: 'Until when.' },
      floorWater: {
        kind: 'quantity',
        dimension: 'volume',
        most: 1,
        doc: 'Water that dries off the floor each day it is wetted against dust.',
      },
      floorAt: { kind: 'timeOfDay', doc: 'When the floor is wetted, local time; left out, at 08:00.' },
    },
  },
  people: {
    shape: 'many',
    doc: 'Who works on it.',
    fields: {
      name: { kind: 'text', need: 'required', doc: 'Name.' },
      role: { kind: 'choice', choices: ['lead', 'helper'], doc: 'Whose rate counts.' },
      trainedUntil: { kind: 'date', doc: 'Isocyanate training valid until.' },
      sensitised: { kind: 'yesno', doc: 'Sensitised to isocyanates: never near two-part paint again.' },
    },
  },
  shifts: {
    shape: 'many',
    doc: 'Who works when.',
    fields: {
      person: { kind: 'ref', to: 'people', need: 'required', doc: 'Who.' },
      days: { kind: 'weekdays', need: 'required', doc: 'On which days.' },
      from: { kind: 'timeOfDay', need: 'required', doc: 'From, local time.' },
      until: { kind: 'timeOfDay', need: 'required', doc: 'Until, local time.' },
    },
  },
  closures: {
    shape: 'many',
    doc: 'Days on which nobody, or one person, does not work.',
    fields: {
      person: { kind: 'ref', to: 'people', doc: 'Who; everyone when left out.' },
      from: { kind: 'date', need: 'required', doc: 'First day.' },
      until: { kind: 'date', need: 'required', doc: 'Last day.' },
      why: { kind: 'text', doc: 'Why.' },
    },
  },
  weather: {
    shape: 'one',
    doc: 'The hourly weather the plan stands on.',
    fields: {
      file: { kind: 'text', doc: 'File beside the job document.' },
      hash: {
        kind: 'text',
        pattern: '[0-9a-f]{64}',
        example: 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855',
        doc: 'SHA-256 of the series, written by the program.',
      },
      typicalFile: {
        kind: 'text',
        doc: 'File beside the job document with a typical year at or near the place: it goes on where the weather ends.',
      },
      typicalHash: {
        kind: 'text',
        pattern: '[0-9a-f]{64}',
        example: 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855',
        doc: 'SHA-256 of the typical year, written by the program.',
      },
      read: { kind: 'instant', doc: 'When the file was read, or the forecast was asked for.' },
      logger: {
        kind: 'text',
        doc: 'File beside the job document: a few days of a logger that hung in the shed or under the cover.',
      },
      loggerHash: {
        kind: 'text',
        pattern: '[0-9a-f]{64}',
        example: 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855',
        doc: 'SHA-256 of what the logger read, written by the program.',
      },
    },
  },
  changes: {
    shape: 'many',
    doc: 'Work found after the quote: a change order each.',
    fields: {
      name: { kind: 'text', need: 'required', doc: 'What is to be done.' },
      found: { kind: 'text', doc: 'What was found.' },
      zone: { kind: 'ref', to: 'zones', doc: 'Where.' },
      hours: { kind: 'quantity', dimension: 'time', ...work, need: 'required', doc: 'More person-hours.' },
      sheet: { kind: 'ref', to: 'sheets', doc: 'What material.' },
      volume: { kind: 'quantity', dimension: 'volume', ...amount, doc: 'How much more of it.' },
      photo: { kind: 'text', doc: 'Number or name of the photo.' },
      date: { kind: 'date', doc: 'When it was found.' },
    },
  },
} as const satisfies Sections
