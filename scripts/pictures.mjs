// Takes the pictures of the guide and of the front page from the running program: docs/guide/<sheet>-<width>.png and
// docs/pictures/boat.png, at a fixed hour.

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { browserArguments, findBrowser, NO_BROWSER } from './browser/find.mjs'
import { startProgram } from './pictures/program.mjs'
import { pictures, takePicture } from './pictures/take.mjs'
import { ROOT, ready } from './ready/main.mjs'

const executablePath = findBrowser()
if (executablePath === undefined) {
  console.error(NO_BROWSER)
  process.exitCode = 1
} else {
  await ready({ build: true })
  await takeAll(executablePath)
}

/** @param {string} browserPath */
async function takeAll(browserPath) {
  const folder = mkdtempSync(join(tmpdir(), 'hardstand-pictures-'))
  const program = await startProgram({ root: ROOT, folder })
  try {
    const browser = await chromium.launch({ executablePath: browserPath, args: browserArguments() })
    for (const picture of pictures) console.log(await takePicture({ browser, program, picture, root: ROOT }))
    await browser.close()
  } finally {
    await program.stop()
    rmSync(folder, { recursive: true, force: true })
  }
}
