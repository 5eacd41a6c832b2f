/** A job that nobody has reckoned yet: a currency begins it. */
import { useState } from 'react'
import { currenciesOf } from '#units'
import { labelOf } from '#words'
import type { JobView } from '../../job/job-view.ts'
import { Button, Ghost, TextField } from '../../parts/index.ts'

export const StartMoney = ({ view }: { readonly view: JobView }) => {
  const [currency, setCurrency] = useState('EUR')
  // A sign that several currencies share names none.
  const right = currenciesOf(currency).length === 1
  return (
    <Ghost
      kind="table"
      action={
        <>
          <TextField
            label={labelOf('money.currency')}
            value={currency}
            narrow
            maxLength={5}
            onCommit={(text) => setCurrency(text.trim())}
            problem={right ? undefined : view.words.sentence('money.currencyWrong')}
          />
          <Button
            next
            disabled={!right || view.readOnly}
            onClick={() => view.edits.set({ part: 'money', section: 'terms', key: 'currency' }, currency)}
          >
            {labelOf('money.start')}
          </Button>
        </>
      }
    >
      {view.words.sentence('money.notBegun')}
    </Ghost>
  )
}
