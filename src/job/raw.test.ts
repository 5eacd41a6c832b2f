import { expect, it } from 'vitest'
import { entryOf, isMap } from './raw.ts'

it.each(['constructor', 'toString', '__proto__', 'hasOwnProperty'])(
  '%s is no entry of an empty map',
  (key) => {
    expect(entryOf({}, key)).toBeUndefined()
  },
)

it('an own entry of any name is found', () => {
  expect(entryOf(JSON.parse('{"__proto__": "a"}') as Record<string, unknown>, '__proto__')).toBe('a')
})

it.each([null, undefined, 'text', 7, true, []])('%j is no map', (value) => expect(isMap(value)).toBe(false))
