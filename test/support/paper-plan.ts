/** A small plan made by hand for tests of papers: two zones, one day, two pours, prices. Everything in it is invented. */
import type { Plan } from '#plan'

/** Monday 2027-05-10 at midnight in UTC, in minutes. */
export const MIDNIGHT = Date.parse('2027-05-10T00:00:00Z') / 60_000

const at = (clock: string): number => {
  const [hour = 0, minute = 0] = clock.split(':').map(Number)
  return MIDNIGHT + hour * 60 + minute
}

const sheet = (
  id: string,
  name: string,
  rest: Partial<Plan['buildUps']['sheets'][number]>,
): Plan['buildUps']['sheets'][number] => ({
  id,
  name,
  family: 'epoxy',
  role: 'primer',
  colour: '',
  shade: '',
  mix: { value: [2, 1], certainty: 'sheet' },
  thinnerShare: { value: 0.1, certainty: 'sheet' },
  clocks: {
    recoatLeast: { value: [{ airC: 20, hours: 10 }], certainty: 'sheet' },
    recoatMost: { value: [{ airC: 20, hours: 72 }], certainty: 'typical' },
  },
  airLeastC: { value: 10, certainty: 'sheet' },
  airMostC: { value: 30, certainty: 'typical' },
  humidityMost: { value: 0.8, certainty: 'sheet' },
  dewMarginK: { value: 3, certainty: 'typical' },
  recoat: [],
  thinners: [],
  isocyanate: false,
  ...rest,
})

const zone = (
  id: string,
  name: string,
  rest: Partial<Plan['surfaces']['zones'][number]>,
): Plan['surfaces']['zones'][number] => ({
  id,
  name,
  kind: 'topsides',
  side: 'port',
  areaM2: 9.84,
  perimeterM: 17.2,
  certainty: 'measured',
  how: 'given',
  existing: 'gelcoat',
  texture: 'smooth',
  indoors: false,
  ...rest,
})

const layer = (
  zoneId: string,
  id: string,
  rest: Partial<Plan['buildUps']['layers'][number]>,
): Plan['buildUps']['layers'][number] => ({
  id: `${zoneId}:${id}`,
  layer: id,
  zone: zoneId,
  sheet: id,
  name: id,
  role: 'primer',
  method: 'roller',
  coats: 1,
  areaM2: 9.84,
  thinnerShare: { value: 0.1, certainty: 'sheet' },
  additiveShare: 0,
  broadcastKgPerM2: 0,
  texture: { value: 1, certainty: 'worked' },
  lossShare: { value: 0, certainty: 'worked' },
  spreadFrom: 'coverage',
  sandBefore: 'P120',
  sandBetween: '',
  ladder: [],
  ...rest,
})

const quantity = (zoneId: string, id: string, mixedM3: number): Plan['quantities']['layers'][number] => ({
  id: `${zoneId}:${id}`,
  layer: id,
  zone: zoneId,
  sheet: id,
  coats: 1,
  areaM2: 9.84,
  mixedPerCoatM3: mixedM3,
  mixedM3,
  thinnerM3: mixedM3 * 0.1,
  additiveM3: 0,
  broadcastKg: 0,
  certainty: 'sheet',
})

const step = (
  id: string,
  kind: string,
  rest: Partial<Plan['steps']['steps'][number]>,
): Plan['steps']['steps'][number] => ({
  id,
  kind,
  phase: 3,
  paces: [{ crew: 1, personMinutes: 60 }],
  inOneGo: false,
  setUpMinutes: 0,
  cleanUpMinutes: 0,
  needs: [],
  air: 'boat',
  dust: 'neither',
  barred: [],
  standsOn: [],
  hazards: [],
  hours: 1,
  certainty: 'typical',
  ...rest,
})

const hull: Plan['surfaces']['outline'] = {
  sheerPlan: {
    keel: [
      [0, -0.4],
      [4, -0.4],
      [5.2, 0],
      [6, 0.9],
    ],
    knuckles: [
      {
        kind: 'chine',
        line: [
          [0, -0.1],
          [4, 0],
          [6, 0.9],
        ],
      },
    ],
    sheer: [
      [0, 0.7],
      [3, 0.75],
      [6, 0.9],
    ],
    waterlines: [],
  },
  halfBreadthPlan: {
    keel: [
      [0, 0],
      [6, 0],
    ],
    knuckles: [
      {
        kind: 'chine',
        line: [
          [0, 0.8],
          [4, 0.7],
          [6, 0],
        ],
      },
    ],
    sheer: [
      [0, 1],
      [3, 1.05],
      [6, 0],
    ],
    waterlines: [
      {
        height: 0,
        lines: [
          [
            [0, 0.85],
            [5.2, 0],
          ],
        ],
      },
    ],
  },
  bodyPlan: [
    {
      id: '4',
      x: 0,
      line: [
        [0, -0.4],
        [0.8, -0.1],
        [1, 0.7],
      ],
    },
    {
      id: '2',
      x: 3,
      line: [
        [0, -0.4],
        [0.78, 0],
        [1.05, 0.75],
      ],
    },
    {
      id: '1',
      x: 4.6,
      line: [
        [0, -0.2],
        [0.5, 0.2],
        [0.7, 0.8],
      ],
    },
    { id: '0', x: 6, line: [[0, 0.9]] },
  ],
}

const hours = Array.from({ length: 24 }, (_, hour) => hour)

export const paperPlan: Plan = {
  stamp: {
    app: '0.1.0',
    work: 'a'.repeat(64),
    money: 'b'.repeat(64),
    log: 'c'.repeat(64),
    weather: 'd'.repeat(64),
    catalogue: 'e'.repeat(64),
    nowMs: Date.parse('2027-05-01T08:00:00Z'),
    seed: 1,
  },
  surfaces: {
    pads: [],
    shapes: [],
    zones: [
      zone('port', 'Topsides port', {}),
      zone('transom', 'Transom', {
        areaM2: 2.31,
        perimeterM: 6.4,
        certainty: 'assumed',
        how: 'surface',
        existing: 'unknown',
      }),
    ],
    outline: hull,
    rules: [],
    notes: [],
  },
  standing: { notes: [] },
  marks: { stripes: [], lines: [], panels: [], zones: [], tapeM: 0, notes: [] },
  repairs: {
    repairs: [
      {
        finding: 'holes',
        zone: 'transom',
        kind: 'hole',
        name: 'Old screw holes',
        count: 8,
        hours: 2,
        volumeM3: 0.0001,
        place: '',
        photo: '',
        certainty: 'measured',
      },
    ],
    fittings: [],
    notes: [],
  },
  buildUps: {
    sheets: [
      sheet('filler', 'Vinylester filler', {
        family: 'vinylester',
        role: 'filler',
        mix: { value: [100, 2], certainty: 'assumed' },
      }),
      sheet('primer', 'Epoxy primer, grey', {}),
      sheet('gloss', 'Two-part gloss', { family: 'two-part polyurethane', role: 'finish' }),
    ],
    layers: [
      layer('port', 'filler', {
        name: 'Spot filling',
        role: 'filler',
        areaM2: 0.4,
        dryFilmM: { value: 0.001, certainty: 'assumed' },
      }),
      layer('port', 'primer', {
        name: 'Primer',
        coats: 2,
        dryFilmM: { value: 0.0001, certainty: 'typical' },
      }),
      layer('port', 'gloss', {
        name: 'Gloss',
        role: 'finish',
        coats: 3,
        dryFilmM: { value: 0.000025, certainty: 'sheet' },
        sandBetween: 'P400',
      }),
      layer('transom', 'primer', {
        name: 'Primer',
        coats: 2,
        areaM2: 2.31,
        dryFilmM: { value: 0.0001, certainty: 'typical' },
        sandBefore: '',
      }),
    ],
    notes: [],
  },
  bonds: { stacks: [], notes: [] },
  quantities: {
    layers: [
      quantity('port', 'filler', 0.0005),
      quantity('port', 'primer', 0.0025),
      quantity('port', 'gloss', 0.0018),
      quantity('transom', 'primer', 0.0006),
    ],
    sheets: [],
    notes: [],
  },
  hazards: { hazards: [], notes: [] },
  steps: {
    steps: [
      step('sand:port', 'sand', { zone: 'port', layer: 'primer', grit: 'P120', areaM2: 9.84 }),
      step('coat:port:primer:1', 'coat', {
        zone: 'port',
        layer: 'primer',
        sheet: 'primer',
        coat: 1,
        coats: 2,
        areaM2: 9.84,
        method: 'roller',
        inOneGo: true,
        hoursKey: 'boat|primer',
      }),
      step('mask:transom', 'mask', { zone: 'transom', layer: 'primer', lengthM: 6.4 }),
    ],
    notes: [],
  },
  conditions: {
    zones: [
      {
        key: 'boat|primer',
        sheet: 'primer',
        place: 'boat',
        firstMinute: MIDNIGHT,
        hoursAfter: [4],
        verdicts: hours.map((hour) => (hour < 8 ? 'no' : hour < 14 ? 'go' : hour < 16 ? 'risky' : 'unknown')),
        failing: hours.map(() => []),
      },
    ],
    air: [
      {
        key: 'boat',
        shelter: 'cover',
        firstMinute: MIDNIGHT,
        airC: hours.map((hour) => 8 + hour / 2),
        humidityShare: hours.map(() => 0.7),
        surfaceC: hours.map((hour) => 9 + hour / 2),
        dewC: hours.map(() => 6),
      },
    ],
    firstMinute: MIDNIGHT,
    lastMinute: MIDNIGHT + 24 * 60,
    notes: [],
  },
  days: {
    placed: [
      {
        step: 'sand:port',
        startMinute: at('07:30'),
        endMinute: at('09:00'),
        pieces: [{ startMinute: at('07:30'), endMinute: at('09:00'), people: ['ada', 'ben'] }],
        verdict: 'go',
        done: false,
      },
      {
        step: 'coat:port:primer:1',
        startMinute: at('09:00'),
        endMinute: at('11:15'),
        pieces: [{ startMinute: at('09:00'), endMinute: at('11:15'), people: ['ada', 'ben'] }],
        verdict: 'go',
        done: false,
      },
      {
        step: 'mask:transom',
        startMinute: at('11:15'),
        endMinute: at('12:00'),
        pieces: [{ startMinute: at('11:15'), endMinute: at('12:00'), people: ['ben'] }],
        verdict: 'go',
        done: false,
      },
    ],
    unplaced: [],
    days: [
      {
        date: '2027-05-10',
        weekday: 1,
        startMinute: MIDNIGHT,
        endMinute: MIDNIGHT + 1440,
        people: [
          { person: 'ada', minutes: 225 },
          { person: 'ben', minutes: 270 },
        ],
        pieces: [
          {
            step: 'sand:port',
            startMinute: at('07:30'),
            endMinute: at('09:00'),
            people: ['ada', 'ben'],
            part: 1,
            parts: 1,
          },
          {
            step: 'coat:port:primer:1',
            startMinute: at('09:00'),
            endMinute: at('11:15'),
            people: ['ada', 'ben'],
            part: 1,
            parts: 1,
          },
          {
            step: 'mask:transom',
            startMinute: at('11:15'),
            endMinute: at('12:00'),
            people: ['ben'],
            part: 1,
            parts: 1,
          },
        ],
      },
    ],
    startMinute: at('07:30'),
    workEndMinute: at('12:00'),
    launchMinute: at('12:00') + 3 * 1440,
    sessions: 2,
    sessionMinutes: 120,
    timeZone: 'UTC',
    notes: [],
  },
  pours: {
    pours: [1, 2].map((nr) => ({
      step: 'coat:port:primer:1',
      zone: 'port',
      sheet: 'primer',
      nr,
      of: 2,
      areaM2: 4.92,
      runs: [{ nr: 1, of: 1, where: 'port' as const, areaM2: 4.92, runM2: 9.84 }],
      intoWet: nr > 1,
      readyM3: 0.000677,
      partsM3: [0.00041, 0.000205],
      thinnerM3: 0.000062,
      trayM3: [0.000226, 0.000226, 0.000225],
      additiveM3: 0,
      partsKg: [0.574, 0.2255],
      thinnerKg: 0.05,
      airC: 13,
      mixAtMinute: at(nr === 1 ? '08:40' : '09:50'),
      useFromMinute: at(nr === 1 ? '09:00' : '10:10'),
      useUntilMinute: at(nr === 1 ? '11:10' : '12:20'),
      certainty: 'sheet' as const,
    })),
    notes: [],
  },
  stores: {
    items: [
      {
        sheet: 'primer',
        name: 'Epoxy primer, grey',
        colour: 'grey',
        needM3: 0.0031,
        reserveM3: 0.00031,
        fromStock: [{ pack: 'primer-1', volumeM3: 0.001, count: 1, shop: '' }],
        bought: [],
        leftoverPartsM3: [0.001],
        buy: [
          { pack: 'primer-1', volumeM3: 0.001, count: 1, shop: 'Chandlery', priceCoins: 4250 },
          { pack: 'primer-2', volumeM3: 0.0025, count: 1, shop: 'Paint shop', priceCoins: 7900 },
        ],
        shortM3: 0,
        leftoverM3: 0.001,
        certainty: 'sheet',
      },
    ],
    consumables: [
      { id: 'gloves', amount: 12, unit: 'pair', certainty: 'assumed' },
      { id: 'masking-tape', amount: 24, unit: 'm', certainty: 'assumed' },
      { id: 'thinner', sheet: 'primer', amount: 0.4, unit: 'L', certainty: 'sheet' },
    ],
    notes: [],
  },
  money: {
    currency: 'EUR',
    lines: [
      {
        id: 'lead',
        group: 'labour',
        subject: 'lead',
        quantity: 10.25,
        unit: 'h',
        unitCoins: 6200,
        coins: 63550,
      },
      {
        id: 'primer:primer-1',
        group: 'materials',
        subject: 'primer',
        quantity: 1,
        unit: 'pack',
        unitCoins: 4250,
        coins: 4250,
      },
      {
        id: 'primer:primer-2',
        group: 'materials',
        subject: 'primer',
        quantity: 1,
        unit: 'pack',
        unitCoins: 7900,
        coins: 7900,
      },
      {
        id: 'gloves',
        group: 'consumables',
        subject: 'gloves',
        quantity: 12,
        unit: 'pair',
        unitCoins: 33,
        coins: 396,
      },
      {
        id: 'lift',
        group: 'costs',
        subject: 'Lift out and in',
        quantity: 1,
        unit: 'sum',
        unitCoins: 42000,
        coins: 42000,
      },
    ],
    subtotals: { labour: 63550, materials: 12150, consumables: 396, costs: 42000, changes: 0 },
    marginCoins: 2509,
    netCoins: 120605,
    taxCoins: 30151,
    totalCoins: 150756,
    depositCoins: 45227,
    complete: true,
    marginShare: 0.2,
    taxShare: 0.25,
    depositShare: 0.3,
    quoteNumber: '7',
    validDays: 30,
    exclusions: 'Engine and electrics.',
    unitPrices: [{ name: 'Wet core', per: 'per 0.1 m²', coins: 24000 }],
    changes: [
      {
        id: 'locker',
        name: 'Re-bond the locker floor',
        found: 'Loose along its after edge',
        zone: 'port',
        photo: '61',
        date: '2027-05-03',
        hours: 5,
        hourlyCoins: 6200,
        labourCoins: 31000,
        materialsCoins: 1534,
        sheet: 'primer',
        volumeM3: 0.0005,
        netCoins: 32534,
        taxCoins: 8134,
        totalCoins: 40668,
        complete: true,
        days: 0.5,
      },
    ],
    notes: [],
  },
  cautions: {
    cautions: [
      {
        code: 'caution.wetFloorPower',
        severity: 'danger',
        data: {},
        protection: ['residualCurrentBreaker'],
        source: 'assumed',
        steps: ['coat:port:primer:1'],
      },
      {
        code: 'caution.epoxy',
        severity: 'warning',
        data: {},
        protection: ['gloves', 'sleeves'],
        source: 'assumed',
        steps: ['coat:port:primer:1'],
      },
      {
        code: 'caution.standMove',
        severity: 'danger',
        data: {},
        protection: [],
        source: 'assumed',
        steps: [],
      },
    ],
  },
  notes: [
    { code: 'conditions.noWeather', severity: 'missing', data: {} },
    {
      code: 'boat.chineBeamAssumed',
      severity: 'assumed',
      data: { chineBeamM: 1.9 },
      source: 'assumed',
    },
  ],
}

export const paperJob = {
  name: 'Brown Teal, refit',
  boatName: 'Brown Teal',
  owner: 'Nora Birch',
  shop: 'Reed Bay Boats',
  place: 'Reed Bay',
  launchDate: '2027-05-20',
  finishWords: 'No runs seen from 2 m.',
  inspectionDistanceM: 2,
  people: [
    { id: 'ada', name: 'Ada Fern' },
    { id: 'ben', name: 'Ben Alder' },
  ],
  units: 'metric',
  locale: 'en-GB',
} as const

/** The same stamp and zone of time, and nothing else: a job that has only just been begun. */
export const emptyPlan: Plan = {
  stamp: {
    app: '0.1.0',
    work: 'a'.repeat(64),
    log: 'c'.repeat(64),
    catalogue: 'e'.repeat(64),
    nowMs: paperPlan.stamp.nowMs,
    seed: 1,
  },
  surfaces: { zones: [], pads: [], shapes: [], rules: [], notes: [] },
  standing: { notes: [] },
  marks: { stripes: [], lines: [], panels: [], zones: [], tapeM: 0, notes: [] },
  repairs: { repairs: [], fittings: [], notes: [] },
  buildUps: { sheets: [], layers: [], notes: [] },
  bonds: { stacks: [], notes: [] },
  quantities: { layers: [], sheets: [], notes: [] },
  hazards: { hazards: [], notes: [] },
  steps: { steps: [], notes: [] },
  conditions: { zones: [], air: [], firstMinute: 0, lastMinute: 0, notes: [] },
  days: {
    placed: [],
    unplaced: [],
    days: [],
    startMinute: Number.MAX_SAFE_INTEGER,
    sessions: 0,
    sessionMinutes: 0,
    timeZone: 'UTC',
    notes: [],
  },
  pours: { pours: [], notes: [] },
  stores: { items: [], consumables: [], notes: [] },
  cautions: { cautions: [] },
  notes: [],
}
