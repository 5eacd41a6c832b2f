import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { ReactNode } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { PartsPage } from '../screens/parts/parts-page.tsx'
import * as parts from './index.ts'

const {
  Button,
  CautionPanel,
  ChoiceField,
  Figure,
  HoursStrip,
  Ledger,
  MovedFigure,
  PotBar,
  Progress,
  QuantityField,
  ShapesSvg,
  StoryStick,
  useHatches,
} = parts

const html = (node: ReactNode): string => renderToStaticMarkup(node)
const text = (node: ReactNode): string =>
  html(node)
    .replace(/<span aria-hidden="true">.*?<\/span><span class="unseen">/g, '')
    .replace(/<[^>]+>/g, '')
const nothing = () => undefined

describe('a figure', () => {
  it('says its name, value and how sure it is, once', () => {
    expect(text(<Figure text="9.84 m²" certainty="sheet" label="Area" />)).toBe(
      'Area: 9.84 m², from the sheet',
    )
  })

  it('is a button only when it has something to show', () => {
    expect(html(<Figure text="1 m" certainty="measured" />)).not.toContain('<button')
    const opened = html(<Figure text="1 m" certainty="measured" label="Length" detail={{ other: '3 ft' }} />)
    expect(opened).toMatch(/<button[^>]*aria-haspopup="dialog"/)
  })

  it('that an edit moved shows what it was and the number of the change', () => {
    const moved = html(<MovedFigure text="5 L" was="4 L" change={41} certainty="worked" />)
    expect(moved).toContain('<del')
    expect(moved).toContain('Change 41')
    expect(html(<MovedFigure text="5 L" was="5 L" change={41} certainty="worked" />)).not.toContain('<del')
  })
})

describe('a field', () => {
  it('that is wrong says so to everybody, and ties the sentence to its box', () => {
    const wrong = html(<QuantityField label="Draft" value="lots" onCommit={nothing} problem="No length." />)
    const said = /id="([^"]+-said)"/.exec(wrong)?.[1]
    expect(wrong).toContain('aria-invalid="true"')
    expect(wrong).toContain(`aria-describedby="${said}"`)
    expect(wrong).toContain('value="lots"')
    expect(html(<QuantityField label="Draft" value="1 m" onCommit={nothing} />)).not.toContain('aria-')
  })

  it('of up to four choices is boxes, of more a list', () => {
    const of = (count: number) =>
      html(
        <ChoiceField
          label="Side"
          value=""
          onChange={nothing}
          choices={Array.from({ length: count }, (_, k) => ({ value: `${k}`, label: `${k}` }))}
        />,
      )
    expect(of(4).match(/type="radio"/g)).toHaveLength(4)
    expect(of(5)).toContain('<select')
  })
})

describe('a ledger', () => {
  const columns = [
    { key: 'what', label: 'What' },
    { key: 'many', label: 'How many', phone: 'second', named: true },
  ] as const

  it('keeps its roles, and marks the selected row', () => {
    const rows = [{ id: 'a', cells: { what: 'Tray', many: 2 }, selected: true, onSelect: nothing }]
    const table = html(<Ledger caption="Tools" columns={columns} rows={rows} />)
    for (const role of ['table', 'row', 'columnheader', 'cell']) expect(table).toContain(`role="${role}"`)
    expect(table).toContain('aria-pressed="true"')
    expect(table).toContain('ledger-selected')
  })

  it('names no cell that is empty', () => {
    const table = html(
      <Ledger caption="Tools" columns={columns} rows={[{ id: 'a', cells: { what: 'Sum' } }]} />,
    )
    expect(table).not.toContain('ledger-name')
  })
})

describe('a drawing', () => {
  it('of hours leaves out what lies outside and cuts what reaches over', () => {
    const strip = html(
      <HoursStrip
        fromMs={100}
        toMs={200}
        label="Hours"
        spans={[
          { kind: 'go', fromMs: 50, toMs: 150 },
          { kind: 'risky', fromMs: 300, toMs: 400 },
        ]}
      />,
    )
    expect(strip).toMatch(/x="0%"[^>]* width="50%"/)
    expect(strip).not.toContain('--risky-hatch)" fill')
    expect(strip.match(/<rect[^>]*y="6"/g)).toBeNull()
  })

  it('of a pot and of progress keeps to its bar', () => {
    expect(html(<PotBar usedShare={7} label="over" />)).toContain('width="100%"')
    expect(html(<Progress label="Work" share={Number.NaN} />)).not.toContain('NaN')
    expect(html(<PotBar usedShare={Number.NaN} label="none" />)).not.toContain('NaN')
  })

  it('has hatches of its own, so that two on a page never share a name', () => {
    const Pair = () => <svg aria-hidden="true">{useHatches(['glass', undefined]).defs}</svg>
    const ids = [...html([<Pair key="a" />, <Pair key="b" />]).matchAll(/id="([^"]+)"/g)].map((m) => m[1])
    expect(ids).toHaveLength(2)
    expect(new Set(ids).size).toBe(2)
  })

  it('of the papers is drawn in tokens, never in a colour of its own', () => {
    const drawing = html(
      <ShapesSvg
        width={10}
        height={10}
        label="Area"
        drawing={[
          {
            kind: 'area',
            points: [
              [0, 0],
              [9, 0],
              [9, 9],
            ],
            fill: 'warning',
            pen: 'waterline',
            ink: 'ink',
          },
          { kind: 'text', at: [1, 1], text: '<b>', style: 'label', align: 'left', ink: 'black' },
        ]}
      />,
    )
    expect(drawing).not.toMatch(/#[0-9a-f]{3,6}/i)
    expect(drawing).toContain('var(--water)')
    expect(drawing).toContain('&lt;b&gt;')
  })
})

describe('the parts', () => {
  it('say the signal word and draw a disc with a name', () => {
    const panel = html(
      <CautionPanel signal="danger" discs={['mask']}>
        Keep out.
      </CautionPanel>,
    )
    expect(panel).toContain('DANGER')
    expect(panel).toContain('aria-label="Wear a mask"')
  })

  it('mark one room as the page that one is on', () => {
    const rooms = [
      { id: 'a', href: '/a', label: 'A', here: true },
      { id: 'b', href: '/b', label: 'B' },
    ]
    const [upright] = html(<StoryStick rooms={rooms} phone={['b']} />).split('phone-stick')
    expect(upright?.match(/aria-current="page"/g)).toHaveLength(1)
  })

  it('never submit a form unless they are told to', () => {
    expect(html(<Button>Go</Button>)).toContain('type="button"')
  })
})

const here = fileURLToPath(new URL('.', import.meta.url))
const pageOf = (folder: string): string =>
  readdirSync(folder)
    .map((file) => readFileSync(`${folder}/${file}`, 'utf8'))
    .join('\n')

describe('every part', () => {
  const components = Object.keys(parts).filter((name) => /^[A-Z]/.test(name))
  const docs = readFileSync(`${here}/../../../docs/design.md`, 'utf8')

  it('is described in the docs', () => {
    expect(components.length).toBeGreaterThan(35)
    expect(components.filter((name) => !docs.includes(`\`${name}\``))).toEqual([])
  })

  it('stands on the page of parts', () => {
    const page = pageOf(`${here}/../screens/parts`)
    expect(components.filter((name) => !page.includes(`<${name}`))).toEqual([])
    expect(html(<PartsPage />)).toContain('Port side: now to 11:00')
  })

  it('keeps its class names to itself', () => {
    const strays = readdirSync(here)
      .filter((file) => file.endsWith('.css'))
      .flatMap((file) => {
        const sheet = readFileSync(`${here}/${file}`, 'utf8').replace(/\/\*.*?\*\//gs, '')
        const first = [...sheet.matchAll(/(?:^|[},])\s*\.([a-z][a-z0-9-]*)/g)].map((match) =>
          String(match[1]),
        )
        const own = file.replace('.css', '')
        const allowed = file === 'story-stick.css' ? [own, 'phone-stick'] : [own]
        return first.filter((name) => !allowed.some((base) => name === base || name.startsWith(`${base}-`)))
      })
    expect(strays).toEqual([])
  })
})
