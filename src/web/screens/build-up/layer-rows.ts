/** The layers of a build-up as rows, from the weather side down, with what the boat has already. */
import type { Certainty } from '#core/note'
import type { Stack, StackLayer } from '#papers'
import type { FigureRef } from '#plan'
import { labelOf, type Words } from '#words'

export type RowFigure = { readonly text: string; readonly certainty: Certainty; readonly of: FigureRef }

export type LayerRow = {
  /** As the section names its bands. */
  readonly id: string
  readonly name: string
  readonly family: string
  readonly film?: RowFigure
  readonly litres?: RowFigure
  readonly recoat: string
}

export function layerRows(stack: Stack, words: Words): readonly LayerRow[] {
  const layers = stack.layers
    .map((layer, at) => rowOf({ id: `new:${at}`, layer, zones: stack.zones.map(({ id }) => id), words }))
    .reverse()
  const bare = stack.existing === 'bare laminate' && !stack.onPaint
  const old: LayerRow = {
    id: 'old',
    name: stack.onPaint ? labelOf('paperLayer.onPaint') : labelOf(`paperOld.${stack.existing}`),
    family: keyed(stack.layers[0]?.sandBefore ?? '', words),
    recoat: '',
  }
  return [
    ...layers,
    ...(bare ? [] : [old]),
    { id: 'laminate', name: labelOf('paperLayer.laminate'), family: '', recoat: '' },
  ]
}

type Of = {
  readonly id: string
  readonly layer: StackLayer
  readonly zones: readonly string[]
  readonly words: Words
}

function rowOf({ id, layer, zones, words }: Of): LayerRow {
  const { dryFilmM, coats, mixedM3 } = layer
  const [zone = ''] = zones
  const film = dryFilmM && words.figure('dryFilmM', dryFilmM.value)
  return {
    id,
    name: layer.name,
    family: words.sentence('paper.familyCoats', {
      family: labelOf(`paperFamily.${layer.family}`),
      count: coats,
    }),
    ...(dryFilmM && film
      ? {
          film: {
            text: coats > 1 ? `${coats} × ${film}` : film,
            certainty: dryFilmM.certainty,
            of: { kind: 'layer film', layer: layer.layer, zone },
          },
        }
      : {}),
    ...(mixedM3.value > 0
      ? {
          litres: {
            text: words.figure('volumeM3', mixedM3.value),
            certainty: mixedM3.certainty,
            of: { kind: 'layer litres', layer: layer.layer, zones },
          },
        }
      : {}),
    recoat: recoatText(layer, words),
  }
}

const keyed = (grit: string, words: Words): string =>
  grit === '' ? '' : words.sentence('paper.sandedWith', { grit })

function recoatText({ recoat }: StackLayer, words: Words): string {
  if (!recoat) return ''
  const from = words.figure('hours', recoat.least)
  const when =
    recoat.most === undefined
      ? words.sentence('paper.fromHours', { from })
      : words.sentence('paper.fromTo', { from, to: words.figure('hours', recoat.most) })
  return `${when} ${words.sentence('paper.atAir', { airC: recoat.airC })}`
}
