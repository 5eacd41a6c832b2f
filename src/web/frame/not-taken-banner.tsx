/** The server does not take what is kept here: why, what to do, and the button that offers it again. */
import { createWords, labelOf } from '#words'
import type { NotTaken } from '../device/document-sync.ts'
import { Banner, Button } from '../parts/index.ts'

const words = createWords({ locale: 'en-GB', system: 'metric' })

export type NotTakenBannerProps = { readonly why: NotTaken; readonly onAgain: () => void }

export const NotTakenBanner = ({ why, onAgain }: NotTakenBannerProps) => (
  <Banner fault action={<Button onClick={onAgain}>{labelOf('frame.offerAgain')}</Button>}>
    {words.sentence(why.code, why.data)}
  </Banner>
)
