/** Product sheets to fill in from the can: in the order in which a label has them, with their thinners and windows. */
import { genericSheetNames, labelOf } from '#words'
import { Collection } from '../../fields/collection.tsx'
import type { JobView } from '../../job/job-view.ts'
import { SheetFiles } from './sheet-files.tsx'
import { usualFigure } from './usual-figure.ts'

/** What stands on every can; the rest is folded away by what it is about. */
const first = ['name', 'like', 'role', 'colour', 'coverage', 'mix', 'thinnerShare', 'thinnerMost'] as const

const groups = [
  { title: 'sheetPart.kind', keys: ['family', 'shade', 'source'] },
  { title: 'sheetPart.film', keys: ['volumeSolids', 'dryFilm'] },
  {
    title: 'sheetPart.mixing',
    keys: [
      'mixByWeight',
      'densityA',
      'densityB',
      'densityThinner',
      'induction',
      'potLife',
      'openedLife',
      'shelfLife',
    ],
  },
  {
    title: 'sheetPart.drying',
    keys: [
      'recoatLeast',
      'recoatMost',
      'touchDry',
      'dryToDew',
      'dryToSand',
      'dryToTape',
      'dryToTread',
      'dryToFit',
      'dryToSling',
      'dryToCover',
      'fullCure',
    ],
  },
  {
    title: 'sheetPart.air',
    keys: ['airLeast', 'airMost', 'skinLeast', 'skinMost', 'humidityMost', 'dewMargin'],
  },
  { title: 'sheetPart.safety', keys: ['flashPoint', 'voc', 'isocyanate'] },
] as const

export const ProductSheets = ({ view }: { readonly view: JobView }) => (
  <>
    <SheetList view={view} />
    <SheetFiles view={view} />
  </>
)

const SheetList = ({ view }: { readonly view: JobView }) => (
  <Collection
    view={view}
    place={{ part: 'work', section: 'sheets' }}
    keys={first}
    groups={groups.map(({ title, keys }) => ({ title: labelOf(title), keys }))}
    fresh={{ name: labelOf('buildUp.newSheet'), like: 'one-part-enamel' }}
    add={labelOf('buildUp.addSheet')}
    aside={({ cells }) => genericSheetNames.get(String(cells.like ?? '')) ?? String(cells.family ?? '')}
    hintOf={({ cells }, key) => usualFigure(view, { like: String(cells.like ?? ''), key })}
    within={({ id }) => <RowsOf view={view} sheet={id} />}
  />
)

/** The rows of other sections that belong to one sheet. */
const RowsOf = ({ view, sheet }: { readonly view: JobView; readonly sheet: string }) => (
  <>
    <h4 className="sheet-rows-title">{labelOf('sheetPart.thinners')}</h4>
    <Collection
      view={view}
      place={{ part: 'work', section: 'thinners' }}
      keys={['name', 'method', 'least', 'most', 'airFrom', 'airUntil']}
      hidden={['sheet']}
      only={({ cells }) => cells.sheet === sheet}
      fresh={{ sheet, most: '10 %' }}
      add={labelOf('sheetPart.addThinner')}
      name={({ cells }) => String(cells.name || labelOf('sheetPart.thinner'))}
      aside={({ cells }) => [cells.least, cells.most].filter(Boolean).join(' – ')}
    />
    <h4 className="sheet-rows-title">{labelOf('sheetPart.windows')}</h4>
    <p className="sheet-rows-help">{labelOf('sheetPart.windowsHelp')}</p>
    <Collection
      view={view}
      place={{ part: 'work', section: 'windows' }}
      keys={['from', 'until', 'at', 'next', 'sanded']}
      hidden={['sheet']}
      only={({ cells }) => cells.sheet === sheet}
      fresh={{ sheet, at: '20 °C', from: '0 h' }}
      add={labelOf('sheetPart.addWindow')}
      name={({ cells }) => `${cells.from || '0 h'} – ${cells.until || '…'}`}
      aside={({ cells }) => String(cells.at ?? '')}
    />
  </>
)
