/** Twelve questions that people can answer; the answers make a whole plan at once. */
import { useState } from 'react'
import { createWords, labelOf, problemText } from '#words'
import { createJob } from '../../device/create-job.ts'
import type { Device } from '../../device/device.ts'
import { Banner, Button, Part, PartRow, Sheet } from '../../parts/index.ts'
import { documentOf, type Wrong, wrongAnswers } from './answers.ts'
import { BoatQuestions } from './boat-questions.tsx'
import { PlaceQuestions } from './place-questions.tsx'
import { useAnswers } from './use-answers.ts'
import { WorkQuestions } from './work-questions.tsx'

export type NewJobScreenProps = { readonly device: Device; readonly go: (href: string) => void }

export const NewJobScreen = ({ device, go }: NewJobScreenProps) => {
  const { answers, change, forget } = useAnswers()
  const [tried, setTried] = useState(false)
  const [fault, setFault] = useState<string>()
  const words = createWords({ locale: navigator.language, system: answers.units })
  const raw = documentOf(answers, labelOf('role.lead'))
  const wrong: ReadonlyMap<string, Wrong> = tried ? wrongAnswers(raw) : new Map()
  const sentence = (field: string): string | undefined => {
    const problem = wrong.get(field)
    return problem && problemText(words, problem)
  }
  const make = async (): Promise<void> => {
    setTried(true)
    if (wrongAnswers(raw).size > 0) return
    try {
      const id = await createJob(device, { raw })
      forget()
      go(`/job/${id}/open`)
    } catch (error) {
      setFault(error instanceof Error ? error.message : 'web.deviceFault')
    }
  }
  const asked = { answers, change, wrong: sentence, words }
  return (
    <Sheet
      title={labelOf('newjob.title')}
      say={words.sentence('newjob.say')}
      action={
        <Button next onClick={() => void make()}>
          {labelOf('newjob.make')}
        </Button>
      }
    >
      {fault === undefined ? null : <Banner fault>{words.sentence(fault)}</Banner>}
      {wrong.size > 0 ? <Banner fault>{words.sentence('newjob.wrong', { count: wrong.size })}</Banner> : null}
      <PartRow>
        <Part title={labelOf('newjob.boat')}>
          <div className="new-job-fields">
            <BoatQuestions {...asked} />
          </div>
        </Part>
        <Part title={labelOf('newjob.place')}>
          <div className="new-job-fields">
            <PlaceQuestions {...asked} />
          </div>
        </Part>
        <Part title={labelOf('newjob.work')}>
          <div className="new-job-fields">
            <WorkQuestions {...asked} />
          </div>
          <div className="new-job-make">
            <Button next onClick={() => void make()}>
              {labelOf('newjob.make')}
            </Button>
          </div>
        </Part>
      </PartRow>
    </Sheet>
  )
}
