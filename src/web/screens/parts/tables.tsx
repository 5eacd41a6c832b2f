/** Tables: with a selected row, with links, with a total. */
import { useState } from 'react'
import { Figure, Ledger, type LedgerRow, Part, PartRow } from '../../parts/index.ts'
import { zoneColumns } from './sample.ts'

export const Tables = () => (
  <PartRow>
    <Part title="Zones">
      <div className="parts-page-wide">
        <Zones />
      </div>
    </Part>
    <Part title="To buy">
      <div className="parts-page-wide">
        <Stores />
      </div>
    </Part>
  </PartRow>
)

const zones = [
  ['port', 'Topsides, port', '9.84\u2009m²', 'worked', 'Two-part, 7 layers'],
  ['starboard', 'Topsides, starboard', '9.84\u2009m²', 'worked', 'as port'],
  ['transom', 'Transom', '2.31\u2009m²', 'measured', 'as port'],
  ['deck', 'Deck, cockpit', '14.6\u2009m²', 'typical', 'Not chosen yet'],
] as const

const Zones = () => {
  const [selected, setSelected] = useState<string>('port')
  const rows = zones.map(
    ([id, zone, area, certainty, buildUp]): LedgerRow => ({
      id,
      selected: id === selected,
      onSelect: () => setSelected(id),
      cells: { zone, area: <Figure text={area} certainty={certainty} />, buildUp },
    }),
  )
  return <Ledger caption="Zones of the boat" columns={zoneColumns} rows={rows} />
}

const Stores = () => (
  <Ledger
    caption="To buy"
    columns={[
      { key: 'what', label: 'What' },
      { key: 'volume', label: 'Volume', align: 'right', phone: 'second', named: true },
      { key: 'packs', label: 'Packs', phone: 'second' },
      { key: 'price', label: 'Price', align: 'right', phone: 'side' },
    ]}
    rows={[
      {
        id: 'primer',
        href: '#stores',
        cells: { what: 'High-build primer', volume: '4.86 L', packs: '1 of 4 L, 1 of 1 L', price: '€214.00' },
      },
      {
        id: 'finish',
        href: '#stores',
        cells: { what: 'Finish, white', volume: '1.02 L', packs: '2 of 750 ml', price: '€138.50' },
      },
      { id: 'sum', total: true, cells: { what: 'Together', volume: '', packs: '', price: '€352.50' } },
    ]}
  />
)
