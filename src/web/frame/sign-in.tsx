/** Asks for the passphrase of the shop, over the sheet: what is kept on this device stays in use meanwhile. */
import { type FormEvent, useState } from 'react'
import { createWords, labelOf } from '#words'
import type { Connection } from '../device/connection.ts'
import { Banner, Button } from '../parts/index.ts'

const words = createWords({ locale: 'en-GB', system: 'metric' })

export const SignIn = ({ connection }: { readonly connection: Connection }) => {
  const [fault, setFault] = useState<string>()
  const enter = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault()
    const passphrase = String(new FormData(event.currentTarget).get('passphrase') ?? '')
    const code = await signIn(passphrase)
    setFault(code)
    if (code === undefined) await connection.greet()
  }
  return (
    <Banner fault={fault !== undefined}>
      {fault === undefined ? words.sentence('jobs.signIn') : words.sentence(fault)}
      <form className="sign-in" onSubmit={(event) => void enter(event)}>
        <label className="field-label">
          {labelOf('jobs.passphrase')}{' '}
          <input
            className="field-input"
            type="password"
            name="passphrase"
            autoComplete="current-password"
            required
          />
        </label>{' '}
        <Button type="submit">{labelOf('jobs.enter')}</Button>
      </form>
    </Banner>
  )
}

/** Undefined when the server lets this browser in, else the code of why not. */
async function signIn(passphrase: string): Promise<string | undefined> {
  try {
    const answer = await fetch('/api/sign-in', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ passphrase }),
    })
    if (answer.ok) return undefined
    const { error } = (await answer.json()) as { readonly error?: { readonly code?: string } }
    return error?.code ?? 'jobs.noServer'
  } catch {
    return 'jobs.noServer'
  }
}
