import { readFileSync, writeFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { parseJob, project } from './index.ts'
import { jsonSchema } from './json-schema.ts'
import { referencePage } from './reference-page.ts'

const files = {
  'job.schema.json': `${JSON.stringify(jsonSchema(), null, 2)}\n`,
  'job-document.md': referencePage(),
}

it.each(Object.entries(files))(
  'docs/%s says what the tables say; UPDATE=1 writes it again',
  (name, wanted) => {
    const url = new URL(`../../docs/${name}`, import.meta.url)
    if (process.env.UPDATE === '1') writeFileSync(url, wanted)
    expect(readFileSync(url, 'utf8')).toBe(wanted)
  },
)

it('the document shown on the reference page reads without a problem', () => {
  const shown = /```yaml\n([^`]*)```/.exec(referencePage())?.[1]
  const { document, problems } = parseJob(new TextEncoder().encode(shown))
  expect(problems).toEqual([])
  expect(project(document!, { strict: true }).problems).toEqual([])
})
