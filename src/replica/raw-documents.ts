/**
 * A shared document as a part of a job, and back. Each section is a root map; an item of a collection is a map of
 * texts under its id. Reading is total: whatever a faulty writer left is handed on for the reader of jobs to judge.
 */
import * as Y from 'yjs'
import type { RawPart } from '#job'

/** Facts about the document itself, beside its sections. */
const aboutKey = 'hardstand'
const versionCell = 'version'

/** The part of a job that a document holds. Values that are no texts come out as they are. */
export function partOf(doc: Y.Doc): RawPart {
  const part: Record<string, unknown> = {}
  for (const name of [...doc.share.keys()].sort()) {
    if (name !== aboutKey) part[name] = sectionOf(doc, name)
  }
  return part as RawPart
}

/** A root that is no map has no entries to read; what it is instead is told as a text. */
function sectionOf(doc: Y.Doc, name: string): unknown {
  const root = rootMap(doc, name)
  return root ? root.toJSON() : ''
}

/** Undefined where another kind of root was made under the name, which would throw. */
function rootMap(doc: Y.Doc, name: string): Y.Map<unknown> | undefined {
  const root = doc.share.get(name)
  return root === undefined || root instanceof Y.Map || root.constructor === Y.AbstractType
    ? doc.getMap(name)
    : undefined
}

/** Version of the job document as written; empty when nothing says. */
export function versionOf(doc: Y.Doc): string {
  const version = rootMap(doc, aboutKey)?.get(versionCell)
  return typeof version === 'string' ? version : ''
}

/** Writes every cell of a part into a document, in one transaction; what was there already and is not in it stays. */
export function fillPart(doc: Y.Doc, part: RawPart, version?: string): void {
  doc.transact(() => {
    if (version !== undefined) doc.getMap(aboutKey).set(versionCell, version)
    for (const [name, section] of Object.entries(part)) {
      const root = doc.getMap(name)
      for (const [key, value] of Object.entries(section)) {
        root.set(key, typeof value === 'string' ? value : new Y.Map(Object.entries(value)))
      }
    }
  })
}
