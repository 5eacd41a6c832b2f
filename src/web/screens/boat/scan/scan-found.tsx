/** What was found in a scan, and what was put right, in words. */
import type { Words } from '#words'
import type { ReadScan } from './use-scan.ts'

export const ScanFound = ({ read, words }: { readonly read: ReadScan; readonly words: Words }) => {
  const { seen, problems } = read
  const { triangles, takenOffShare, found } = seen
  const counts = ['collapsed', 'repeated', 'turned', 'crowdedEdges', 'twistedEdges'] as const
  return (
    <>
      <p>
        {words.sentence('scan.seen', {
          triangles,
          takenOffShare,
          smoothed: takenOffShare > 0 ? 'yes' : 'no',
        })}
      </p>
      <ul className="scan-found">
        {problems.map(({ code, data }) => (
          <li key={code}>{words.sentence(code, data)}</li>
        ))}
        {counts
          .filter((key) => found[key] > 0)
          .map((key) => (
            <li key={key}>{words.sentence(`scan.${key}`, { count: found[key] })}</li>
          ))}
        {seen.unitNotes.map(({ code, data }) => (
          <li key={code}>{words.sentence(code, data)}</li>
        ))}
        {seen.twin ? null : <li>{words.sentence('scan.notTwin')}</li>}
      </ul>
    </>
  )
}
