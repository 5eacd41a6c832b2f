/**
 * Solvents of paints, resins and thinners: what a litre of liquid makes of vapour, where it burns and what may be
 * breathed. Limits change and local rules go first: the product's own safety sheet outranks this table.
 */

/** A published figure; `memory` was written down without the book at hand and stays marked until it is read. */
export type SolventFigure = {
  readonly value: number
  readonly source: string
  readonly sure: 'read' | 'memory'
}

/** A lower explosive limit; books differ, so each row says whose it is. */
export type LelFigure = SolventFigure & { readonly table: 'niosh' | 'g11' | 'ntp' }

export type Solvent = {
  readonly id: string
  readonly name: string
  /** What people and labels call it as well. */
  readonly otherNames: readonly string[]
  /** Density against water. */
  readonly specificGravity: SolventFigure
  readonly molarMassGPerMol: SolventFigure
  /** Lower explosive limits, % of air by volume. */
  readonly lelPct: readonly LelFigure[]
  /** Vapour of a US gallon at 70 °F, ft³; of 29 CFR 1910.94 Table G-11. */
  readonly vapourFt3PerGal?: SolventFigure
  /** OSHA permissible exposure limit, mean of 8 h, ppm. */
  readonly pelPpm: SolventFigure
  /** OSHA ceiling, ppm. */
  readonly pelCeilingPpm?: SolventFigure
  /** NIOSH recommended exposure limit, mean of up to 10 h, ppm. */
  readonly relPpm: SolventFigure
  /** NIOSH recommended limit for 15 min, ppm. */
  readonly relShortPpm?: SolventFigure
  /** Immediately dangerous to life or health, ppm. */
  readonly idlhPpm: SolventFigure
}

const pocketGuide = 'NIOSH Pocket Guide to Chemical Hazards (2005-151)'
const idlhPages = 'NIOSH IDLH documentation'
const osha = 'OSHA 29 CFR 1910.1000'
const tableG11 = 'OSHA 29 CFR 1910.94 Table G-11'
const ntp = 'US National Toxicology Program chemical data'

const read = (value: number, source: string): SolventFigure => ({ value, source, sure: 'read' })
const memory = (value: number, source: string): SolventFigure => ({ value, source, sure: 'memory' })
const niosh = (figure: SolventFigure): LelFigure => ({ ...figure, table: 'niosh' })
const g11 = (value: number): LelFigure => ({ ...memory(value, tableG11), table: 'g11' })

export const solvents: readonly Solvent[] = [
  {
    id: 'styrene',
    name: 'styrene',
    otherNames: ['vinyl benzene', 'phenylethylene'],
    specificGravity: read(0.91, pocketGuide),
    molarMassGPerMol: read(104.2, pocketGuide),
    lelPct: [niosh(read(0.9, pocketGuide))],
    pelPpm: read(100, `${osha} Table Z-2`),
    pelCeilingPpm: read(200, `${osha} Table Z-2 (600 ppm peak, 5 min in any 3 h)`),
    relPpm: read(50, pocketGuide),
    relShortPpm: read(100, pocketGuide),
    idlhPpm: read(700, pocketGuide),
  },
  {
    id: 'acetone',
    name: 'acetone',
    otherNames: ['2-propanone', 'dimethyl ketone'],
    specificGravity: read(0.79, pocketGuide),
    molarMassGPerMol: memory(58.1, pocketGuide),
    lelPct: [niosh(memory(2.5, pocketGuide)), { ...read(2.6, ntp), table: 'ntp' }, g11(2.6)],
    vapourFt3PerGal: memory(44.0, tableG11),
    pelPpm: read(1000, `${osha} Table Z-1`),
    relPpm: read(250, pocketGuide),
    idlhPpm: read(2500, idlhPages),
  },
  {
    id: 'mek',
    name: 'MEK',
    otherNames: ['methyl ethyl ketone', '2-butanone', 'butanone'],
    specificGravity: memory(0.81, pocketGuide),
    molarMassGPerMol: memory(72.1, pocketGuide),
    lelPct: [niosh(read(1.4, `${idlhPages}, at 200 °F`)), g11(1.8)],
    vapourFt3PerGal: memory(36.0, tableG11),
    pelPpm: read(200, `${osha} Table Z-1`),
    relPpm: read(200, idlhPages),
    relShortPpm: read(300, idlhPages),
    idlhPpm: read(3000, idlhPages),
  },
  {
    id: 'mibk',
    name: 'MIBK',
    otherNames: ['methyl isobutyl ketone', 'hexone', '4-methyl-2-pentanone'],
    specificGravity: memory(0.8, pocketGuide),
    molarMassGPerMol: read(100.2, idlhPages),
    lelPct: [niosh(read(1.2, `${idlhPages}, at 200 °F`))],
    pelPpm: read(100, `${osha} Table Z-1`),
    relPpm: read(50, idlhPages),
    relShortPpm: read(75, idlhPages),
    idlhPpm: read(500, idlhPages),
  },
  {
    id: 'n-butyl-acetate',
    name: 'n-butyl acetate',
    otherNames: ['butyl acetate', 'n-butyl ethanoate'],
    specificGravity: memory(0.88, pocketGuide),
    molarMassGPerMol: memory(116.2, pocketGuide),
    lelPct: [niosh(read(1.7, idlhPages)), g11(1.7)],
    vapourFt3PerGal: memory(24.8, tableG11),
    pelPpm: read(150, `${osha} Table Z-1`),
    relPpm: read(150, idlhPages),
    relShortPpm: read(200, idlhPages),
    idlhPpm: read(1700, idlhPages),
  },
  {
    id: 'xylene',
    name: 'xylene',
    otherNames: ['xylenes', 'xylol', 'o-xylene', 'm-xylene', 'p-xylene'],
    specificGravity: memory(0.86, `${pocketGuide} (p-xylene; o-xylene 0.88)`),
    molarMassGPerMol: read(106.2, pocketGuide),
    lelPct: [
      niosh(read(0.9, `${idlhPages} (o-xylene)`)),
      niosh(read(1.1, `${idlhPages} (m- and p-xylene)`)),
      g11(1.0),
    ],
    vapourFt3PerGal: memory(26.4, `${tableG11} (o-xylene)`),
    pelPpm: read(100, `${osha} Table Z-1`),
    relPpm: read(100, idlhPages),
    relShortPpm: read(150, idlhPages),
    idlhPpm: read(900, idlhPages),
  },
  {
    id: 'toluene',
    name: 'toluene',
    otherNames: ['toluol', 'methyl benzene'],
    specificGravity: memory(0.87, pocketGuide),
    molarMassGPerMol: memory(92.1, pocketGuide),
    lelPct: [niosh(memory(1.1, pocketGuide)), g11(1.4)],
    vapourFt3PerGal: memory(30.4, tableG11),
    pelPpm: memory(200, `${osha} Table Z-2`),
    pelCeilingPpm: memory(300, `${osha} Table Z-2 (500 ppm peak, 10 min)`),
    relPpm: memory(100, pocketGuide),
    relShortPpm: memory(150, pocketGuide),
    idlhPpm: memory(500, pocketGuide),
  },
  {
    id: 'ethanol',
    name: 'ethanol',
    otherNames: ['ethyl alcohol', 'grain alcohol'],
    specificGravity: read(0.79, pocketGuide),
    molarMassGPerMol: read(46.1, pocketGuide),
    lelPct: [niosh(read(3.3, pocketGuide)), g11(4.3)],
    vapourFt3PerGal: memory(55.2, tableG11),
    pelPpm: read(1000, `${osha} Table Z-1`),
    relPpm: read(1000, pocketGuide),
    idlhPpm: read(3300, idlhPages),
  },
]

/** A solvent by id, name or other name, without regard to case; undefined when the table has none. */
export function findSolvent(text: string): Solvent | undefined {
  const wanted = text.trim().toLowerCase()
  return solvents.find((solvent) =>
    [solvent.id, solvent.name, ...solvent.otherNames].some((name) => name.toLowerCase() === wanted),
  )
}
