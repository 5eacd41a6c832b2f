/** What a person says of a scan: its unit, how it lies, a taped length, the marks; then the hull that comes of it. */
import { useEffect, useState } from 'react'
import {
  type LaidScan,
  type Laying,
  metresIn,
  type Point3,
  type ScanHull,
  type ScanSides,
  type ScanUnit,
  type ScanView,
} from '#plan'
import { labelOf } from '#words'
import { Fold } from '../../../fields/cells.tsx'
import { cellOf, type JobView } from '../../../job/job-view.ts'
import { localDate } from '../../../job/local-date.ts'
import { takeScan } from '../../../job/take-scan.ts'
import { Button, ChoiceField, Dialog, Progress } from '../../../parts/index.ts'
import { LengthField, metresOf } from './length-field.tsx'
import { MarkFields, MarkList } from './mark-list.tsx'
import { type CropText, cropOf, ScanCrop } from './scan-crop.tsx'
import { ScanFound } from './scan-found.tsx'
import { answersOf, type MarkId, marksFor, type Places, sideFor, tapeMarks } from './scan-marks.ts'
import { ScanResult } from './scan-result.tsx'
import { ScanViews } from './scan-views.tsx'
import type { ReadScan, ScanWork } from './use-scan.ts'

/** Without these there is no frame. */
const needed: readonly MarkId[] = ['stemWater', 'portWater', 'starboardWater']

type CheckKind = 'overall' | 'between' | 'none'

const units = Object.keys(metresIn) as readonly ScanUnit[]

export type ScanDialogProps = {
  readonly view: JobView
  readonly file: File
  readonly onClose: () => void
}

export type ScanSettingProps = ScanDialogProps & { readonly scan: ScanWork; readonly read: ReadScan }

export const ScanSetting = (props: ScanSettingProps) => {
  const { view, file, onClose, scan, read } = props
  const { words } = view
  const set = useSetting(props)
  const [hull, setHull] = useState<ScanHull>()
  const [working, setWorking] = useState(false)
  const workOut = async (): Promise<void> => {
    setWorking(true)
    setHull(await scan.work(set.laying, set.answers()))
    setWorking(false)
  }
  if (hull?.ok) {
    const take = (): void => {
      const from = words.sentence('scan.cell', {
        file: file.name,
        date: localDate(Math.floor(Date.now() / 60_000), view.timeZone),
        triangles: read.seen.triangles,
        factor: hull.factor.toFixed(4),
        takenOffShare: read.seen.takenOffShare,
      })
      takeScan(view, { hull, from })
      onClose()
    }
    return (
      <Dialog
        title={labelOf('scan.result')}
        onClose={onClose}
        wide
        actions={
          <>
            <Button onClick={() => setHull(undefined)}>{labelOf('scan.back')}</Button>
            <Button next onClick={take} disabled={view.readOnly}>
              {labelOf('scan.take')}
            </Button>
          </>
        }
      >
        <ScanResult hull={hull} seen={read.seen} words={words} />
      </Dialog>
    )
  }
  return (
    <Dialog
      title={file.name}
      onClose={onClose}
      wide
      actions={
        <>
          <Button onClick={onClose}>{labelOf('scan.cancel')}</Button>
          <Button next onClick={() => void workOut()} disabled={working || !set.shown}>
            {labelOf('scan.work')}
          </Button>
        </>
      }
    >
      <ScanFound read={read} words={words} />
      <Setting set={set} {...props} />
      {working ? <Progress label={labelOf('scan.working')} /> : null}
      {hull && !working ? (
        <ul role="alert" className="scan-faults">
          {hull.notes
            .filter(({ severity }) => severity === 'fault' || severity === 'missing')
            .map(({ code, data }) => (
              <li key={code}>{words.sentence(code, data)}</li>
            ))}
        </ul>
      ) : null}
    </Dialog>
  )
}

type Setting = ReturnType<typeof useSetting>

function useSetting({ view, scan, read }: ScanSettingProps) {
  const [unit, setUnit] = useState<ScanUnit>(read.seen.unit)
  const [sides, setSides] = useState<ScanSides>('both')
  const [turns, setTurns] = useState({ endForEnd: false, quarters: 0 })
  const [shown, setShown] = useState<LaidScan>()
  const [places, setPlaces] = useState<Places>({})
  const [chosen, setChosen] = useState<MarkId>('stemWater')
  const overall = cellOf(view, { part: 'work', section: 'boat', key: 'lengthOverall' })
  const [check, setCheck] = useState<CheckKind>(overall === '' ? 'between' : 'overall')
  const [lengths, setLengths] = useState({ overall, between: '' })
  const [crop, setCrop] = useState<CropText>({})
  const laying: Laying = { unitM: metresIn[unit], up: read.up, sides, ...turns }
  const key = JSON.stringify(laying)
  const { lay, pick } = scan
  // Marks belong to how the scan lies: laid anew they would stand beside it.
  useEffect(() => {
    let stale = false
    setPlaces({})
    void lay(JSON.parse(key) as Laying).then((next) => {
      if (!stale && next) setShown(next)
    })
    return () => {
      stale = true
    }
  }, [lay, key])
  const put = (mark: MarkId, at: Point3 | undefined): void => setPlaces((now) => ({ ...now, [mark]: at }))
  const touch = async (mark: MarkId, from: ScanView, at: readonly [number, number]): Promise<void> => {
    const kind = [...marksFor(sides), ...tapeMarks].find(({ id }) => id === mark)!
    const place = await pick(laying, { view: from, at, side: sideFor(kind, sides) })
    if (!place) return
    put(mark, place)
    // The first three are asked for in turn, so that a thumb need not go back to the list.
    const next = marksFor(sides).find(({ id }) => id !== mark && !places[id])
    if (!places[mark] && next && needed.includes(next.id)) setChosen(next.id)
  }
  const answers = () => {
    const { tapeA, tapeB } = places
    const length = check === 'none' ? undefined : metresOf(lengths[check])
    const taped =
      length === undefined
        ? undefined
        : check === 'overall'
          ? ({ kind: 'overall', length } as const)
          : tapeA && tapeB
            ? ({ kind: 'between', places: [tapeA, tapeB], length } as const)
            : undefined
    const marks = answersOf(places, sides, (id) => labelOf(`scanMark.${id}`))
    return { check: taped, marks, crop: shown && cropOf(crop, shown.box), sides }
  }
  const marks = [...marksFor(sides), ...(check === 'between' ? tapeMarks : [])]
  return {
    ...{
      unit,
      setUnit,
      sides,
      setSides,
      turns,
      setTurns,
      laying,
      shown,
      places,
      put,
      touch,
      chosen,
      setChosen,
    },
    ...{ check, setCheck, lengths, setLengths, crop, setCrop, answers, marks },
  }
}

const Setting = ({ set, view }: ScanSettingProps & { readonly set: Setting }) => {
  const { words } = view
  const choices = <Value extends string>(prefix: string, values: readonly Value[]) =>
    values.map((value) => ({ value, label: labelOf(`${prefix}.${value}`) }))
  return (
    <>
      <div className="cells">
        <ChoiceField
          label={labelOf('scan.unit')}
          choices={choices('scanUnit', units)}
          value={set.unit}
          onChange={set.setUnit}
          as="list"
        />
        <ChoiceField
          label={labelOf('scan.sides')}
          choices={choices('scanSides', ['both', 'port', 'starboard'] as const)}
          value={set.sides}
          onChange={set.setSides}
        />
      </div>
      <div className="scan-turns">
        <Button onClick={() => set.setTurns((now) => ({ ...now, endForEnd: !now.endForEnd }))}>
          {labelOf('scan.turnEnds')}
        </Button>
        <Button onClick={() => set.setTurns((now) => ({ ...now, quarters: (now.quarters + 1) % 4 }))}>
          {labelOf('scan.turnQuarter')}
        </Button>
      </div>
      <p>{words.sentence('scan.markSay')}</p>
      <MarkList {...set} onChoose={set.setChosen} words={words} />
      {set.shown ? (
        <ScanViews
          shown={set.shown}
          marks={set.marks}
          places={set.places}
          chosen={set.chosen}
          crop={cropOf(set.crop, set.shown.box)}
          onChoose={set.setChosen}
          onPick={(mark, from, at) => void set.touch(mark, from, at)}
        />
      ) : (
        <Progress label={labelOf('scan.laying')} />
      )}
      <MarkFields {...set} view={view} />
      <div className="cells">
        <ChoiceField
          label={labelOf('scan.check')}
          choices={choices('scanCheck', ['overall', 'between', 'none'] as const)}
          value={set.check}
          onChange={set.setCheck}
          as="list"
          help={words.sentence('scan.checkSay')}
        />
        {set.check === 'none' ? null : (
          <LengthField
            view={view}
            label={labelOf('scan.taped')}
            value={set.lengths[set.check]}
            onCommit={(text) => set.setLengths((now) => ({ ...now, [set.check]: text }))}
          />
        )}
      </div>
      <Fold title={labelOf('scan.crop')}>
        <ScanCrop view={view} text={set.crop} box={set.shown?.box} onText={set.setCrop} />
      </Fold>
    </>
  )
}
