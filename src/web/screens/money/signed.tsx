/** The quote as it was signed: kept, whatever the plan comes to afterwards. */
import type { Estimate } from '#plan'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { localDate } from '../../job/local-date.ts'
import { Button } from '../../parts/index.ts'

export type SignedProps = { readonly view: JobView; readonly estimate: Estimate }

const terms = { part: 'money', section: 'terms' } as const

export const Signed = ({ view, estimate }: SignedProps) => {
  const { words, edits, readOnly } = view
  const { signedCoins, signedDate, totalCoins, currency, complete } = estimate
  if (signedCoins !== undefined)
    return (
      <p>
        {words.sentence('money.signed', {
          signedCoins,
          currency,
          date: signedDate ?? 'none',
          overCoins: Math.abs(totalCoins - signedCoins),
          way: totalCoins > signedCoins ? 'over' : totalCoins < signedCoins ? 'under' : 'at',
        })}
      </p>
    )
  if (!complete || readOnly) return null
  const sign = (): void =>
    edits.together((all) => {
      const text = `${words.figure('priceCoins', totalCoins, { currency })}`
      all.set({ ...terms, key: 'signed' }, text)
      all.set({ ...terms, key: 'signedOn' }, localDate(Math.floor(view.nowMs / 60_000), view.timeZone))
    })
  return <Button onClick={sign}>{labelOf('money.sign')}</Button>
}
