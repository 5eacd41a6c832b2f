/** A tape of temperatures: dew point, the coldest surface that may be coated, the surface itself, and the air. */
import { labelOf, type Words } from '#words'
import { useHatches } from '../../parts/use-hatches.tsx'
import { givenNumber, numberOf } from './say-sum.ts'
import type { SumDrawingProps } from './sum-props.ts'

const wide = 340
const tape = { top: 86, high: 40 }

type Mark = { readonly key: string; readonly atC: number; readonly text: string }

export const DewTape = ({ answer, words }: SumDrawingProps) => {
  const hatches = useHatches(['wait'])
  const dewC = numberOf(answer, 'dewPointC')
  const leastC = numberOf(answer, 'leastSurfaceC')
  if (dewC === undefined || leastC === undefined) return null
  const surfaceC = givenNumber(answer, 'surfaceC')
  const airC = givenNumber(answer, 'airC')
  const shown = [dewC, leastC, surfaceC, airC].filter((value) => value !== undefined)
  const span = { from: Math.min(...shown) - 2, to: Math.max(...shown) + 2 }
  const x = (atC: number): number => 4 + ((atC - span.from) / (span.to - span.from)) * (wide - 8)
  const label = words.sentence(
    surfaceC === undefined ? 'sumscreen.dewDrawing' : 'sumscreen.dewDrawingSurface',
    { dewPointC: dewC, leastSurfaceC: leastC, ...(surfaceC === undefined ? {} : { surfaceC }) },
  )
  const below = tape.top + tape.high
  return (
    <svg className="sums-drawing" viewBox={`0 0 ${wide} 190`} role="img" aria-label={label}>
      {hatches.defs}
      <rect x="2" y={tape.top} width={wide - 4} height={tape.high} fill="var(--stick)" />
      <rect x="2" y={tape.top} width={x(leastC) - 2} height={tape.high} fill={hatches.fill('wait')} />
      <Ticks span={span} x={x} words={words} />
      <path d={`M2 ${tape.top}H${wide - 2}M2 ${below}H${wide - 2}`} stroke="var(--ink)" strokeWidth="2" />
      <path d={`M${x(dewC)} ${tape.top - 26}V${below}`} className="sums-dew-line" />
      <path d={`M${x(leastC)} ${tape.top - 4}V${below + 4}`} stroke="var(--ink)" strokeWidth="2.5" />
      <Above mark={{ key: 'dew', atC: dewC, text: labelOf('sumScreen.dew') }} x={x} words={words} level={0} />
      <Above
        mark={{ key: 'least', atC: leastC, text: labelOf('sumScreen.from') }}
        x={x}
        words={words}
        level={1}
      />
      {surfaceC === undefined ? null : (
        <Below
          mark={{ key: 'surface', atC: surfaceC, text: labelOf('sumScreen.surface') }}
          x={x}
          words={words}
        />
      )}
      {airC === undefined ? null : (
        <Below mark={{ key: 'air', atC: airC, text: labelOf('sumScreen.air') }} x={x} words={words} low />
      )}
    </svg>
  )
}

type MarkProps = { readonly mark: Mark; readonly x: (atC: number) => number; readonly words: Words }

/** Lettering keeps inside the drawing: it leans to the side that has room. */
const lean = (at: number) => (at > wide - 90 ? 'end' : at < 90 ? 'start' : 'middle')

const lettering = ({ mark, words }: Pick<MarkProps, 'mark' | 'words'>): string =>
  `${mark.text} ${words.figure('markC', mark.atC, {}, { decimals: 1 })}`

const Above = ({ mark, x, words, level }: MarkProps & { readonly level: number }) => {
  const at = x(mark.atC)
  const y = level === 0 ? 50 : 74
  return (
    <text
      x={level === 0 ? Math.max(at - 4, 84) : Math.min(at + 4, wide - 84)}
      y={y}
      textAnchor={level === 0 ? 'end' : 'start'}
    >
      {lettering({ mark, words })}
    </text>
  )
}

const Below = ({ mark, x, words, low = false }: MarkProps & { readonly low?: boolean }) => {
  const at = x(mark.atC)
  const top = tape.top + tape.high
  const foot = low ? 172 : 148
  return (
    <>
      <path
        d={low ? `M${at} ${top}V${foot - 13}` : `M${at} ${top - 8}l8 16h-16Z`}
        fill={low ? 'none' : 'var(--skin)'}
        stroke={low ? 'var(--ink2)' : 'var(--ink)'}
        strokeWidth="1.5"
      />
      <text x={lean(at) === 'middle' ? at : lean(at) === 'end' ? wide - 4 : 4} y={foot} textAnchor={lean(at)}>
        {lettering({ mark, words })}
      </text>
    </>
  )
}

type TicksProps = {
  readonly span: { readonly from: number; readonly to: number }
  readonly x: (atC: number) => number
  readonly words: Words
}

/** A tick each degree of the reader, longer each fifth; none where they would run together. */
const Ticks = ({ span, x, words }: TicksProps) => {
  const us = words.figure('markC', 0).includes('32')
  const toC = (degrees: number): number => (us ? ((degrees - 32) * 5) / 9 : degrees)
  const first = Math.ceil(us ? (span.from * 9) / 5 + 32 : span.from)
  const last = Math.floor(us ? (span.to * 9) / 5 + 32 : span.to)
  const every = last - first > 40 ? 5 : 1
  const degrees = Array.from({ length: last - first + 1 }, (_, index) => first + index)
  return (
    <g stroke="var(--ink)">
      {degrees
        .filter((degree) => degree % every === 0)
        .map((degree) => (
          <path key={degree} d={`M${x(toC(degree))} ${tape.top}v${degree % 5 === 0 ? 13 : 7}`} />
        ))}
    </g>
  )
}
