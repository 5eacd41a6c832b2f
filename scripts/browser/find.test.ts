import { describe, expect, it } from 'vitest'
import { findBrowser } from './find.mjs'

const only = (path: string) => (tried: string) => tried === path

describe('finding a browser', () => {
  it('takes the one that is named, and no other when that is none', () => {
    const env = { HARDSTAND_CHROMIUM: '/opt/mine', PATH: '/usr/bin' }
    expect(findBrowser({ env, runs: only('/opt/mine') })).toBe('/opt/mine')
    expect(findBrowser({ env, runs: only('/usr/bin/chromium') })).toBeUndefined()
  })

  it('looks along the path, then where it usually stands', () => {
    expect(findBrowser({ env: { PATH: '/a:/b' }, runs: only('/b/chromium') })).toBe('/b/chromium')
    expect(findBrowser({ env: {}, runs: only('/usr/bin/chromium') })).toBe('/usr/bin/chromium')
  })

  it('finds none where none is', () => {
    expect(findBrowser({ env: { PATH: '/a' }, runs: () => false })).toBeUndefined()
  })
})
