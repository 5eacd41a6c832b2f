/** Sunlight above the air. */

const dayMs = 86_400_000

/** Mean over the year on a surface that faces the sun, W/m². Source: ASTM E490-00a (2000), 1366.1. */
const solarConstantWm2 = 1366.1

/**
 * Sunlight above the air on a surface that faces the sun: it swings by the year as the earth comes nearer.
 * @param atMs moment, milliseconds since 1970-01-01 UTC. @returns W/m², about 1321 in early July to 1414 in early January.
 * Equation: E = 1366.1 (1.00011 + 0.034221 cos B + 0.00128 sin B + 0.000719 cos 2B + 0.000077 sin 2B),
 * B = 2π (day of the year - 1) / 365.
 * Source: J. W. Spencer, Fourier series representation of the position of the sun, Search 2 (1971) 172; the series is
 * also in M. Iqbal, An Introduction to Solar Radiation, 1983, eq. 1.2.1 (both from memory).
 */
export function extraterrestrialSun(atMs: number): number {
  const day = Math.floor((atMs - Date.UTC(new Date(atMs).getUTCFullYear(), 0, 1)) / dayMs)
  const angle = (2 * Math.PI * day) / 365
  const nearness =
    1.00011 +
    0.034221 * Math.cos(angle) +
    0.00128 * Math.sin(angle) +
    0.000719 * Math.cos(2 * angle) +
    0.000077 * Math.sin(2 * angle)
  return solarConstantWm2 * nearness
}
