/** Findings and hardware as work: hours and material as given by hand, until recipes are worked out. */
import type { Note } from '#core/note'
import type { Work } from '#job'
import type { Known } from './known.ts'
import type { Stage } from './remember.ts'
import type { FittingPlan, Repair, Repairs, Sure } from './types.ts'

export type RepairsInput = {
  readonly findings: Work['findings']
  readonly fittings: Work['fittings']
  readonly known: Known
}

export const repairs: Stage<RepairsInput, Repairs> = { name: 'repairs', run: listRepairs }

function listRepairs({ findings, fittings, known }: RepairsInput): Repairs {
  const planned = fittings.map((fitting) => fittingPlan(fitting, known))
  const byHand: readonly Note[] =
    findings.length > 0
      ? [{ code: 'repairs.byHand', severity: 'uncovered', data: { count: findings.length } }]
      : []
  const stops = findings.filter((finding) => finding.kind === 'soft core' || finding.kind === 'crack')
  return {
    repairs: findings.map(repairOf),
    fittings: planned,
    notes: [...byHand, ...stops.map(structureNote), ...assumedNotes(planned)],
  }
}

const structureNote = (finding: Work['findings'][number]): Note => ({
  code: 'repairs.mayBeStructural',
  severity: 'caution',
  data: { finding: finding.id, name: finding.name ?? finding.kind },
  source: 'surveyors’ lists',
})

const repairOf = (finding: Work['findings'][number]): Repair => ({
  finding: finding.id,
  zone: finding.zone,
  kind: finding.kind,
  name: finding.name ?? finding.kind,
  count: finding.count ?? 1,
  hours: finding.hours.value,
  ...(finding.sheet === undefined ? {} : { sheet: finding.sheet }),
  volumeM3: finding.volume?.value ?? 0,
  ...(finding.size ? { sizeM: finding.size.value } : {}),
  ...(finding.area ? { areaM2: finding.area.value } : {}),
  ...placeOf(finding),
  place: finding.place ?? '',
  photo: finding.photo ?? '',
  certainty: finding.hours.certainty,
})

function placeOf({ fromStern, height, offCentre }: Work['findings'][number]): Pick<Repair, 'at'> {
  if (!fromStern && !height && !offCentre) return {}
  return {
    at: {
      ...(fromStern ? { xM: fromStern.value } : {}),
      ...(offCentre ? { yM: offCentre.value } : {}),
      ...(height ? { heightM: height.value } : {}),
    },
  }
}

/** What is left alone is photographed and masked, whatever the plan for it says. */
const leftAlone = (kind: string | undefined): boolean => kind !== undefined && kind !== 'fitting'

/** Edge to mask round a piece that stays, when nobody measured it; assumed. */
const PIECE_EDGE_M = 0.5

function fittingPlan(fitting: Work['fittings'][number], known: Known): FittingPlan {
  const count = fitting.count ?? 1
  const alone = leftAlone(fitting.kind)
  const reach = fitting.reach ?? 'free'
  const factor = known.rates.reachFactors[reach] ?? 1
  const off = given(fitting.hoursOff) ?? {
    value: known.rates.fittingHours.value * factor,
    certainty: 'assumed',
  }
  const on = given(fitting.hoursOn) ?? {
    value: off.value * known.rates.refitFactor.value,
    certainty: 'assumed',
  }
  const stays = alone || fitting.plan === 'leave'
  return {
    fitting: fitting.id,
    zone: fitting.zone,
    name: fitting.name,
    count,
    plan: fitting.plan,
    leaveAlone: alone,
    hoursOff: off,
    hoursOn: on,
    reach,
    holes: stays ? 0 : count * (fitting.fasteners ?? 0),
    maskM: stays ? count * (fitting.perimeter?.value ?? PIECE_EDGE_M) : 0,
    place: fitting.place ?? '',
    photo: fitting.photo ?? '',
    bag: fitting.bag ?? '',
    bedding: fitting.bedding ?? '',
  }
}

const given = (
  figure: { readonly value: number; readonly certainty: 'measured' | 'assumed' } | undefined,
): Sure<number> | undefined => figure && { value: figure.value, certainty: figure.certainty }

function assumedNotes(planned: readonly FittingPlan[]): readonly Note[] {
  const off = planned.filter((fitting) => fitting.plan !== 'leave' && !fitting.leaveAlone)
  const guessed = off.filter((fitting) => fitting.hoursOff.certainty === 'assumed').length
  return guessed === 0
    ? []
    : [
        {
          code: 'repairs.fittingHoursAssumed',
          severity: 'assumed',
          data: { count: guessed, of: off.length },
          source: 'assumed',
        },
      ]
}
