// Every screen: readable by everyone, within its width, large enough to hit, and without a request to elsewhere.
import { AxeBuilder } from '@axe-core/playwright'
import type { BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { describeInBrowser, open } from './support/app.ts'
import { screens } from './support/screens.ts'

const targetPx = 48

describeInBrowser('every screen', (app) => {
  let context: BrowserContext
  let page: Page
  const elsewhere: string[] = []
  const broken: string[] = []

  beforeAll(async () => {
    context = await app().device({ viewport: { width: 1280, height: 900 }, reducedMotion: 'reduce' })
    page = await context.newPage()
    context.on('request', (request) => {
      const { protocol, host } = new URL(request.url())
      const ours = protocol === 'blob:' || protocol === 'data:' || host === new URL(app().origin).host
      if (!ours) elsewhere.push(request.url())
    })
    page.on('pageerror', (error) => void broken.push(`${page.url()}: ${error.message}`))
  })
  afterAll(() => context.close())

  it.each(screens)('%s can be read, fits its width, and is large enough to hit', async (path) => {
    await page.setViewportSize({ width: 1280, height: 900 })
    await open(page, path)
    const found = [...(await violationsByDayAndNight(page))]
    found.push(...(await blockRows(page)))
    for (const width of [1600, 900, 360]) {
      await page.setViewportSize({ width, height: 800 })
      if (width === 1600) found.push(...(await blockRows(page)))
      found.push(...(await over(page, `${width} px`)))
    }
    found.push(...(await tooSmall(page)))
    await page.setViewportSize({ width: 1280, height: 900 })
    await page.evaluate(() => document.documentElement.style.setProperty('font-size', '32px'))
    found.push(...(await over(page, 'text twice as large')))
    expect(found.join('\n')).toBe('')
  })

  it('asked nothing of any other machine, and broke nowhere', () => {
    expect(elsewhere).toEqual([])
    expect(broken).toEqual([])
  })
})

async function violationsByDayAndNight(page: Page): Promise<readonly string[]> {
  const day = await violations(page, 'light')
  await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' })
  const night = await violations(page, 'dark')
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' })
  return [...day, ...night]
}

/** Night changes nothing but colours. */
async function violations(page: Page, colorScheme: 'light' | 'dark'): Promise<readonly string[]> {
  // A sheet of examples shows a second stick beside its own.
  const exempt = page.url().endsWith('/parts') ? ['landmark-unique'] : []
  const axe = new AxeBuilder({ page }).setLegacyMode().disableRules(exempt)
  const { violations: found } = await (colorScheme === 'dark'
    ? axe.withRules('color-contrast')
    : axe
  ).analyze()
  return found.flatMap(({ id, nodes }) =>
    nodes.slice(0, 3).map(({ target, any, all, none }) => {
      const why = [...any, ...all, ...none][0]?.message ?? ''
      return `${colorScheme}: ${id} at ${target.join(' ')}: ${why}`
    }),
  )
}

/** The title block stays in sight, so it takes one row. */
const blockRows = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const cells = [...document.querySelectorAll('main .title-block-cell')]
    const tops = new Set(cells.map((cell) => Math.round(cell.getBoundingClientRect().top)))
    return tops.size > 1 ? [`the title block has ${tops.size} rows at ${innerWidth} px`] : []
  })

/** What reaches over the right side, when anything makes the page scroll sideways. */
const over = (page: Page, at: string): Promise<string[]> =>
  page.evaluate(async (when) => {
    // What follows the width by itself has done so two frames later.
    await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)))
    const { scrollWidth, clientWidth } = document.documentElement
    if (scrollWidth <= clientWidth) return []
    const wide = [...document.querySelectorAll('body *')].filter(
      (element) => element.getBoundingClientRect().right > clientWidth + 1,
    )
    const names = wide.slice(-3).map((element) => `${element.tagName}.${element.getAttribute('class')}`)
    return [`${when}: ${scrollWidth} of ${clientWidth} px: ${names.join(', ')}`]
  }, at)

/** Controls that a finger misses; a link in running text is as high as its line. */
const tooSmall = (page: Page): Promise<string[]> =>
  page.evaluate((least) => {
    const isHit = (element: Element): boolean => {
      const { width, height } = element.getBoundingClientRect()
      return width > 1 && height > 1 && element.checkVisibility({ visibilityProperty: true })
    }
    const inText = (element: Element): boolean =>
      element.tagName === 'A' &&
      element.closest('p, li, dd, td, .sheet-say') !== null &&
      getComputedStyle(element).display === 'inline'
    /** A box with a label around it, or a face beside it, is hit through the label. */
    const hitPlace = (element: Element): Element => {
      const isBox = element.matches('input[type=radio], input[type=checkbox]')
      return (isBox ? element.closest('label') : element.closest('.field-box')) ?? element
    }
    /** What lies unseen around a control belongs to it. */
    const reachOf = (element: Element): number => {
      const around = ['::before', '::after'].map((place) => getComputedStyle(element, place))
      const more = around.map(({ position, height }) =>
        position === 'absolute' ? Number.parseFloat(height) || 0 : 0,
      )
      return Math.max(element.getBoundingClientRect().height, ...more)
    }
    const all = [
      ...document.querySelectorAll('a[href], button, input, select, textarea, summary, [role=button]'),
    ]
    const small = all
      .filter((element) => isHit(element) && !inText(element))
      .map(hitPlace)
      .filter((element) => reachOf(element) < least - 0.5)
    const lines = small.map((element) => {
      const { width, height } = element.getBoundingClientRect()
      const what = `${element.tagName}.${element.getAttribute('class')} "${element.textContent?.trim().slice(0, 24)}"`
      return `too small: ${what} ${Math.round(width)} × ${Math.round(height)}`
    })
    return [...new Set(lines)].slice(0, 12)
  }, targetPx)
