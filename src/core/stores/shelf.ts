/** Which packs on the shelf may still be used: not past their date, and not open for too long. */

export type ShelfPack = {
  readonly id: string
  /** What is in one of each part, m³; of an opened one what is left. */
  readonly partsM3: readonly number[]
  readonly count: number
  /** As printed on it; empty where nobody wrote it down. */
  readonly batch: string
  /** Bought for this job in one purchase. */
  readonly forThisJob: boolean
  /** Day it was opened. */
  readonly openedDay?: number
  /** Last day on which it may be opened. */
  readonly bestBeforeDay?: number
}

export type Refused = {
  readonly pack: string
  readonly why: 'past its date' | 'open too long' | 'other batch'
}

/** Days are any count of days; without dates of the work nothing is refused for its age. */
export function shelfFor(
  shelf: readonly ShelfPack[],
  when: { readonly firstDay?: number; readonly lastDay?: number; readonly openDays?: number },
): { readonly usable: readonly ShelfPack[]; readonly refused: readonly Refused[] } {
  const refused = shelf.flatMap((pack): readonly Refused[] => {
    const why = whyNot(pack, when)
    return why === undefined ? [] : [{ pack: pack.id, why }]
  })
  return { usable: shelf.filter(({ id }) => !refused.some(({ pack }) => pack === id)), refused }
}

/** An opened pack must last until the last use, since nobody knows which coat it will go to. */
function whyNot(
  pack: ShelfPack,
  {
    firstDay,
    lastDay,
    openDays,
  }: { readonly firstDay?: number; readonly lastDay?: number; readonly openDays?: number },
): Refused['why'] | undefined {
  const { openedDay, bestBeforeDay } = pack
  if (openedDay === undefined) {
    const isPast = bestBeforeDay !== undefined && firstDay !== undefined && bestBeforeDay < firstDay
    return isPast ? 'past its date' : undefined
  }
  const isOld = openDays !== undefined && lastDay !== undefined && lastDay - openedDay > openDays
  return isOld ? 'open too long' : undefined
}
