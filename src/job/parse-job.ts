/** Bytes of a file to a raw document, with every problem of the file itself and its place. */
import { buildRaw } from './build-raw.ts'
import { decodeBytes } from './decode-bytes.ts'
import { lineIndex } from './line-index.ts'
import { offsetFinder } from './offset-finder.ts'
import { byPlace, type Locate, type Problem } from './problem.ts'
import type { RawDocument } from './raw.ts'
import { readJson } from './read-json.ts'
import { readYaml } from './read-yaml.ts'
import type { TreeFault, TreeReading } from './tree.ts'

export type ParsedJob = {
  /** No problem was found in the file itself; what stands in its cells is `project`'s affair. */
  readonly ok: boolean
  /** Missing when the file cannot be trusted to mean what it seems to. */
  readonly document?: RawDocument
  readonly problems: readonly Problem[]
  /** Where a key or value stands in the file, for problems found later. */
  readonly locate: Locate
}

/**
 * Reads a job document from the bytes of a YAML or JSON file. Never throws for what stands in the file.
 * A `name` ending in `.json` asks for strict JSON.
 */
export const parseJob = (bytes: Uint8Array, { name }: { readonly name?: string } = {}): ParsedJob => {
  const decoded = decodeBytes(bytes)
  if (!decoded.ok) {
    const { code, data } = decoded
    return { ok: false, problems: [{ code, severity: 'error', pointer: '', data }], locate: () => undefined }
  }
  const { text } = decoded
  const reading = readText(text, name)
  const faults = [...reading.faults]
  const document = reading.tree && buildRaw(reading.tree, faults)
  const place = lineIndex(text)
  const offsetOf = offsetFinder(reading.tree)
  const problems = faults.map((fault) => problemOf(fault, place(fault.at))).sort(byPlace)
  const locate: Locate = (pointer, part) => {
    const at = offsetOf(pointer, part)
    return at === undefined ? undefined : place(at)
  }
  return { ok: problems.length === 0, ...(document ? { document } : {}), problems, locate }
}

const readText = (text: string, name: string | undefined): TreeReading => {
  if (name?.toLowerCase().endsWith('.json')) return readJson(text)
  if (!text.trimStart().startsWith('{')) return readYaml(text)
  const asJson = readJson(text)
  return asJson.tree ? asJson : readYaml(text)
}

const problemOf = ({ code, pointer, data }: TreeFault, { line, column }: { line: number; column: number }) =>
  ({ code, severity: 'error', pointer, line, column, data }) as const
