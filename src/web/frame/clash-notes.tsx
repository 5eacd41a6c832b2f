/** Over the sheet: cells that another device wrote while this one did too, and which of the two shall stand. */
import { labelOf, type Words } from '#words'
import { itemsOf, nameOf } from '../fields/items.ts'
import type { JobView } from '../job/job-view.ts'
import { type ShownClash, shownClashes } from '../job/settle-clash.ts'
import { shortName } from '../job/short-name.ts'
import { Banner, Button } from '../parts/index.ts'

/** More at once would push the sheet out of sight; the next one comes when one is settled. */
const most = { wide: 3, phone: 1 } as const

type ClashNotesProps = {
  readonly view: Pick<JobView, 'raw' | 'clashes' | 'settleClash' | 'readOnly' | 'words'>
}

export const ClashNotes = ({ view }: ClashNotesProps) => {
  const { words, readOnly, settleClash } = view
  const all = shownClashes(view)
  if (all.length === 0) return null
  return (
    <div className="clash-notes">
      {all.slice(0, most.wide).map(({ stands, ...clash }) => (
        <Banner
          key={[clash.part, clash.section, clash.item, clash.key].join('/')}
          action={
            <div className="clash-acts">
              {readOnly ? null : (
                <Button onClick={() => settleClash(clash, 'mine')}>{labelOf('frame.clashMine')}</Button>
              )}
              <Button onClick={() => settleClash(clash, 'theirs')}>{labelOf('frame.clashLeave')}</Button>
            </div>
          }
        >
          {clashText(view, { ...clash, stands }, words)}
        </Banner>
      ))}
      {(['wide', 'phone'] as const).map((where) =>
        all.length > most[where] ? (
          <div key={where} className={`clash-more-${where}`}>
            <Banner>{words.sentence('frame.clashMore', { count: all.length - most[where] })}</Banner>
          </div>
        ) : null,
      )}
    </div>
  )
}

/** `Area` within a sentence; `VOC` stays as it is. */
const inSentence = (label: string): string =>
  /^\p{Lu}\p{Ll}/u.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label

function clashText(view: Pick<JobView, 'raw'>, clash: ShownClash, words: Words): string {
  const { section, item, key, mine, theirs, stands } = clash
  const label = labelOf(`cell.${section}.${key}`)
  const found = itemsOf(view, clash).find(({ id }) => id === item)
  const place = found ? `${shortName(nameOf(found))}, ${inSentence(label)}` : label
  return words.sentence('frame.clash', {
    place,
    mine: shortName(mine),
    theirs: shortName(theirs),
    stands: shortName(stands),
    now: stands === theirs ? 'theirs' : stands === '' ? 'cleared' : 'other',
  })
}
