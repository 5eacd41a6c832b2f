import { expect, it } from 'vitest'
import { cellsOf } from './tell-dialog.tsx'

const texts = {
  ...{ date: '2027-05-05', time: '14:00', by: ' Ola, Kim ', text: '' },
  ...{ batch: 'B1/0427', used: '0.9 L', wetFilm: '', skin: '16 °C' },
}

it('an entry for a coat holds what was filled in, other work only who and the words', () => {
  const told = { kind: 'done', step: 'coat:port:primer:1', texts } as const
  expect(cellsOf({ ...told, isCoat: true })).toEqual({
    ...{ kind: 'done', step: 'coat:port:primer:1', by: 'Ola, Kim' },
    ...{ batch: 'B1/0427', used: '0.9 L', skin: '16 °C' },
  })
  expect(cellsOf({ ...told, isCoat: false })).toEqual({
    ...{ kind: 'done', step: 'coat:port:primer:1', by: 'Ola, Kim' },
  })
})
