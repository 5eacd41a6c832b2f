// Reads as much of Markdown as the checks of the docs need: headings and their anchors, links, fences, tables.

/**
 * @typedef {{ level: number, text: string, anchor: string, line: number }} Heading
 * @typedef {{ target: string, line: number }} Link
 * @typedef {{ language: string, lines: string[], line: number }} Fence line is that of its first inner line, from 1
 * @typedef {{ headings: Heading[], links: Link[], fences: Fence[], anchors: Set<string>, prose: string[] }} Page
 */

const FENCE = /^\s*(`{3,}|~{3,})\s*([\w-]*)/
const HEADING = /^(#{1,6})\s+(.*?)\s*#*$/
const LINK = /\[(?:[^\][]|\[[^\]]*\])*\]\(\s*<?([^)\s>]*)>?(?:\s+["'][^)]*)?\)/g
const REFERENCE = /^\s*\[[^\]]+\]:\s*<?(\S+?)>?(?:\s|$)/
const HTML_LINK = /<(?:a|img)\b[^>]*?\b(?:href|src)="([^"]*)"/g
const HTML_ANCHOR = /<\w+\b[^>]*?\b(?:id|name)="([^"]*)"/g

/**
 * @param {string} text
 * @returns {Page} `prose` holds every line, those of fences empty
 */
export function readPage(text) {
  const { fences, prose } = splitFences(text.split(/\r?\n/))
  const headings = headingsOf(prose)
  const anchors = new Set(headings.map((heading) => heading.anchor))
  for (const line of prose) for (const [, id] of line.matchAll(HTML_ANCHOR)) anchors.add(id ?? '')
  return { headings, links: prose.flatMap(linksOf), fences, anchors, prose }
}

/** @param {readonly string[]} lines */
function splitFences(lines) {
  /** @type {Fence[]} */
  const fences = []
  /** @type {string[]} */
  const prose = []
  /** @type {{ mark: string, fence: Fence } | undefined} */
  let open
  for (const [i, line] of lines.entries()) {
    const [, mark = '', language = ''] = FENCE.exec(line) ?? []
    if (open === undefined && mark !== '') {
      open = { mark, fence: { language, lines: [], line: i + 2 } }
      fences.push(open.fence)
    } else if (open !== undefined && mark.startsWith(open.mark) && language === '') open = undefined
    else if (open !== undefined) open.fence.lines.push(line)
    else {
      prose.push(line)
      continue
    }
    prose.push('')
  }
  return { fences, prose }
}

/**
 * @param {readonly string[]} prose
 * @returns {Heading[]}
 */
function headingsOf(prose) {
  /** @type {Map<string, number>} */
  const times = new Map()
  return prose.flatMap((line, i) => {
    const [, marks, text] = HEADING.exec(line) ?? []
    if (marks === undefined || text === undefined) return []
    const slug = anchorOf(text)
    const before = times.get(slug) ?? 0
    times.set(slug, before + 1)
    const anchor = before === 0 ? slug : `${slug}-${before}`
    return [{ level: marks.length, text: text.replaceAll('`', ''), anchor, line: i + 1 }]
  })
}

/**
 * @param {string} text of a heading
 * @returns {string} the anchor that code hosts give it
 */
export function anchorOf(text) {
  return text
    .replace(LINK, (whole) => whole.slice(1, whole.indexOf(']')))
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\p{M}_\- ]/gu, '')
    .replaceAll(' ', '-')
}

/**
 * @param {string} line
 * @param {number} i
 * @returns {Link[]}
 */
function linksOf(line, i) {
  const bare = line.replace(/`[^`]*`/g, (code) => 'x'.repeat(code.length))
  const reference = REFERENCE.exec(bare)
  const targets = [...bare.matchAll(LINK), ...bare.matchAll(HTML_LINK), ...(reference ? [reference] : [])]
  return targets.map(([, target = '']) => ({ target, line: i + 1 }))
}

/**
 * The lines under a heading, up to the next heading of its level or above.
 *
 * @param {Page} page
 * @param {Heading} heading
 * @returns {string}
 */
export function sectionOf({ headings, prose }, heading) {
  const next = headings.find((other) => other.line > heading.line && other.level <= heading.level)
  return prose.slice(heading.line - 1, next ? next.line - 1 : undefined).join('\n')
}

/**
 * @param {Page} page
 * @returns {string[][]} the cells of every row of every table, heads and rules left out
 */
export function tableRows({ prose }) {
  const isRow = (/** @type {string | undefined} */ line) => line?.trimStart().startsWith('|') ?? false
  const isRule = (/** @type {string | undefined} */ line) => /^\s*\|[\s:|-]+$/.test(line ?? '')
  return prose
    .filter((line, i) => isRow(line) && !isRule(line) && !isRule(prose[i + 1]))
    .map((line) =>
      line
        .trim()
        .replace(/^\||\|$/g, '')
        .split(/(?<!\\)\|/)
        .map((cell) => cell.trim()),
    )
}
