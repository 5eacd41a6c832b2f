/** What a person must know whatever sheet is open: not kept, read only, a plan that could not be made, a new version. */
import { labelOf } from '#words'
import type { JobView } from '../job/job-view.ts'
import { Banner, Button } from '../parts/index.ts'

export const JobBanner = ({ view }: { readonly view: JobView }) => {
  const { kept, words, fault, readOnly } = view
  if (kept.fault !== undefined) return <Banner fault>{words.sentence(kept.fault)}</Banner>
  if (readOnly) return <Banner>{words.sentence('frame.readOnly')}</Banner>
  if (fault) return <Banner fault>{words.sentence(fault.code, fault.data)}</Banner>
  if (kept.newer && kept.waiting === 0) {
    return (
      <Banner action={<Button onClick={() => location.reload()}>{labelOf('frame.reload')}</Button>}>
        {words.sentence('frame.newer')}
      </Banner>
    )
  }
  return null
}
