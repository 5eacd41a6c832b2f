/** A pour into the tray: never all of it at once, since paint skins and loses thinner in the open. */

/**
 * Even fillings of about what the shop pours at a time.
 * @param pour.ready whole millilitres in the cup. @param pour.usual ml at a time, over 0. @param pour.most ml.
 * @returns whole millilitres each, summing to `ready`; one filling where `ready` is no more than `most`.
 */
export function trayFillings(pour: {
  readonly ready: number
  readonly usual: number
  readonly most: number
}): readonly number[] {
  const { ready, usual, most } = pour
  if (ready <= 0) return []
  const count = Math.max(1, Math.round(ready / usual), Math.ceil(ready / most))
  const [least, over] = [Math.floor(ready / count), ready % count]
  return Array.from({ length: count }, (_, index) => least + (index < over ? 1 : 0))
}
