/**
 * What a person must know whatever sheet is open: not kept, not taken by the server, read only, a plan that could not
 * be made, a new version.
 */
import { labelOf } from '#words'
import type { Device } from '../device/device.ts'
import type { JobView } from '../job/job-view.ts'
import { Banner, Button } from '../parts/index.ts'
import { NotTakenBanner } from './not-taken-banner.tsx'
import { SignIn } from './sign-in.tsx'

export type JobBannerProps = { readonly view: JobView; readonly device: Device }

export const JobBanner = ({ view, device }: JobBannerProps) => {
  const { kept, words, fault, readOnly } = view
  if (kept.fault !== undefined) return <Banner fault>{words.sentence(kept.fault)}</Banner>
  if (kept.mustSignIn) return <SignIn connection={device.connection} />
  if (kept.notTaken) return <NotTakenBanner why={kept.notTaken} onAgain={view.offerAgain} />
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
