import { expect, it } from 'vitest'
import { distanceM } from './distance.ts'

const degree = Math.PI / 180
const at = (latitude: number, longitude: number) => ({
  latitude: latitude * degree,
  longitude: longitude * degree,
})

it('a degree of latitude is 111.19 km, a quarter of the earth 10,007.5 km, and the date line no wall', () => {
  expect(distanceM(at(50, 8), at(51, 8)) / 1000).toBeCloseTo(111.19, 2)
  expect(distanceM(at(0, 0), at(90, 0)) / 1000).toBeCloseTo(10_007.54, 2)
  expect(distanceM(at(0, 179.5), at(0, -179.5)) / 1000).toBeCloseTo(111.19, 2)
  expect(distanceM(at(12, 34), at(12, 34))).toBe(0)
})
