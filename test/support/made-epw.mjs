// A typical year in EPW made by arithmetic: 8760 rows of 35 fields as long as those of a real station.

const flags = '?9'.repeat(20)

/** @returns {string} */
export function madeEpw() {
  const head = [
    'LOCATION,Made,-,XX,Made,000000,50.00,10.00,1.0,120.0',
    'DESIGN CONDITIONS,0',
    'TYPICAL/EXTREME PERIODS,0',
    'GROUND TEMPERATURES,0',
    'HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0',
    'COMMENTS 1,Made by arithmetic',
    'COMMENTS 2,',
    'DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31',
  ]
  const rows = Array.from({ length: 8760 }, (_, hour) => {
    const date = new Date(Date.UTC(2001, 0, 1, hour))
    const warmth =
      Math.sin((hour / 8760) * 2 * Math.PI - 2) * 10 + Math.sin((hour / 24) * 2 * Math.PI - 2) * 4
    const sun = Math.max(0, Math.round(800 * Math.sin((((hour % 24) - 6) / 12) * Math.PI)))
    return [
      1980 + date.getUTCMonth(),
      date.getUTCMonth() + 1,
      date.getUTCDate(),
      date.getUTCHours() + 1,
      0,
      flags,
      (10 + warmth).toFixed(1),
      (6 + warmth).toFixed(1),
      76,
      101000 + (hour % 500),
      sun,
      1415,
      330,
      sun,
      Math.round(sun * 0.8),
      Math.round(sun * 0.3),
      sun * 100,
      0,
      sun * 100,
      237,
      (hour * 10) % 360,
      (2 + (hour % 7) / 2).toFixed(1),
      hour % 11,
      hour % 11,
      '16.0',
      77777,
      9,
      999999999,
      230,
      '0.0720',
      0,
      88,
      '0.140',
      hour % 2 === 0 ? '999.0' : '0.0',
      hour % 2 === 0 ? '99.0' : '1.0',
    ].join(',')
  })
  return `${[...head, ...rows].join('\r\n')}\r\n`
}
