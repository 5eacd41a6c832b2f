/** YAML to a tree: every scalar is its source text; aliases, anchors, tags, depth and size are kept in bounds. */
import {
  Composer,
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  Lexer,
  type ParsedNode,
  Parser,
} from 'yaml'
import { limits } from './limits.ts'
import { below } from './pointer.ts'
import { quote } from './problem.ts'
import type { Tree, TreeEntry, TreeFault, TreeReading } from './tree.ts'

/**
 * Reads `text` as one YAML 1.2 document in which everything is a map or a text.
 * The pieces are counted while they are cut, and the depth while they are put together, so that a hostile file is
 * refused before the tree is built.
 */
export const readYaml = (given: string): TreeReading => {
  const text = withLineFeeds(given)
  const cut = cutUp(text)
  if (!cut.ok) return { faults: [cut.fault] }
  const documents = [...new Composer(options).compose(cut.tokens, true, text.length)]
  const [document] = documents as readonly Document.Parsed[]
  if (document === undefined) return { faults: [{ code: 'job.empty', at: 0, pointer: '', data: {} }] }
  const faults = syntaxFaults(document, text)
  const second = documents[1]
  if (second !== undefined) faults.push(faultAt('job.manyDocuments', second.range[0]))
  if (faults.length > 0) return { faults }
  const walk: Walk = { anchors: new Map(), faults, aliases: 0, texts: 0 }
  const tree = convert(walk, document.contents as ParsedNode | null, { pointer: '', depth: 0, at: 0 })
  return { tree, faults }
}

/** YAML 1.2 ends a line at a carriage return too, the library does not; places stay where they are. */
const withLineFeeds = (text: string): string => text.replace(/\r(?!\n)/g, '\n')

const options = { schema: 'failsafe', uniqueKeys: false, prettyErrors: false, logLevel: 'silent' } as const

type Tokens = Parameters<Composer['compose']>[0]
type Cut = { readonly ok: true; readonly tokens: Tokens } | { readonly ok: false; readonly fault: TreeFault }

const faultAt = (code: string, at: number, data: TreeFault['data'] = {}, pointer = ''): TreeFault => ({
  code,
  at,
  pointer,
  data,
})

/** Each map or list in the file takes two places on the parser's stack at most. */
const deepest = limits.depth * 2 + 2

const cutUp = (text: string): Cut => {
  const parser = new Parser()
  const tokens = []
  let pieces = 0
  let marks = 0
  for (const piece of new Lexer().lex(text)) {
    const { offset } = parser
    if (isMark(piece) && ++marks > limits.aliases * 2)
      return refuse('job.tooManyAliases', offset, limits.aliases)
    if (++pieces > limits.yamlPieces) return refuse('job.tooManyPieces', offset, limits.yamlPieces)
    for (const token of parser.next(piece)) tokens.push(token)
    if (parser.stack.length > deepest) return refuse('job.tooDeep', offset, limits.depth)
  }
  for (const token of parser.end()) tokens.push(token)
  return { ok: true, tokens }
}

const refuse = (code: string, at: number, most: number): Cut => ({
  ok: false,
  fault: faultAt(code, at, { most }),
})

/** Anchor, alias or tag. */
const isMark = (piece: string): boolean => piece[0] === '&' || piece[0] === '*' || piece[0] === '!'

/** One fault a place: a slip often makes the parser complain twice of the same character. */
const syntaxFaults = (document: Document.Parsed, text: string): TreeFault[] => {
  const end = text.trimEnd().length
  const byPlace = new Map<number, TreeFault>()
  for (const { code, pos } of document.errors) {
    const [at] = pos
    const fault =
      at >= end
        ? faultAt('job.truncated', at)
        : faultAt('job.yaml', at, { reason: code, found: lineAt(text, at) })
    if (!byPlace.has(at)) byPlace.set(at, fault)
  }
  return [...byPlace.values()]
}

const lineAt = (text: string, at: number): string => {
  const piece = text.slice(at, at + 200)
  return quote(piece.split(/[\r\n]/, 1)[0] as string)
}

type Walk = {
  readonly anchors: Map<string, ParsedNode>
  readonly faults: TreeFault[]
  aliases: number
  texts: number
}
type Spot = { readonly pointer: string; readonly depth: number; readonly at: number }

const nothing = (at: number): Tree => ({ kind: 'text', at, text: '', empty: true })

const convert = (walk: Walk, node: ParsedNode | null, spot: Spot): Tree => {
  if (node === null) return nothing(spot.at)
  const at = node.range[0]
  if (spot.depth > limits.depth) return refused(walk, 'job.tooDeep', { ...spot, at }, { most: limits.depth })
  if (isAlias(node)) return follow(walk, node.source, { ...spot, at })
  if (node.anchor !== undefined) walk.anchors.set(node.anchor, node)
  if (node.tag !== undefined) refused(walk, 'job.tag', { ...spot, at }, { found: quote(node.tag) })
  if (isMap<ParsedNode, ParsedNode | null>(node)) {
    return { kind: 'map', at, entries: entriesOf(walk, node.items, { ...spot, at }) }
  }
  if (isSeq(node)) return { kind: 'list', at }
  return isScalar(node) ? scalar(walk, node, { ...spot, at }) : nothing(at)
}

const scalar = (walk: Walk, node: ParsedNode & { type?: unknown }, spot: Spot): Tree => {
  if (++walk.texts === limits.cells) refused(walk, 'job.tooManyCells', spot, { most: limits.cells })
  const text = String((node as { value?: unknown }).value)
  return node.type === 'PLAIN' && /^(?:~|null|Null|NULL|)$/.test(text)
    ? nothing(spot.at)
    : { kind: 'text', at: spot.at, text, empty: false }
}

const refused = (walk: Walk, code: string, { at, pointer }: Spot, data: TreeFault['data']): Tree => {
  walk.faults.push(faultAt(code, at, data, pointer))
  return nothing(at)
}

/** An alias stands for a copy; the copies are counted, so that a few lines cannot grow into millions. */
const follow = (walk: Walk, name: string, spot: Spot): Tree => {
  const target = walk.anchors.get(name)
  walk.aliases++
  if (walk.aliases > limits.aliases || walk.texts >= limits.cells) {
    return walk.aliases === limits.aliases + 1
      ? refused(walk, 'job.tooManyAliases', spot, { most: limits.aliases })
      : nothing(spot.at)
  }
  if (target === undefined) return refused(walk, 'job.alias', spot, { found: quote(name) })
  return convert(walk, target, spot)
}

type Pairs = readonly { readonly key: ParsedNode; readonly value: ParsedNode | null }[]

const entriesOf = (walk: Walk, pairs: Pairs, { pointer, depth, at: mapAt }: Spot): readonly TreeEntry[] => {
  const entries = new Map<string, TreeEntry>()
  for (const pair of pairs) {
    const at = pair.key?.range?.[0] ?? mapAt
    const key = isScalar(pair.key) ? String(pair.key.value) : undefined
    if (key === undefined) {
      walk.faults.push(faultAt('job.keyNotText', at, {}, pointer))
      continue
    }
    const inside = below(pointer, key)
    if (pair.key.anchor !== undefined) walk.anchors.set(pair.key.anchor, pair.key)
    const value = convert(walk, pair.value, { pointer: inside, depth: depth + 1, at })
    if (entries.has(key)) walk.faults.push(faultAt('job.duplicateKey', at, { found: quote(key) }, inside))
    else entries.set(key, { key, at, value })
  }
  return [...entries.values()]
}
