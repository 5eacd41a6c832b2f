/** Shortcuts that this build-up tempts to, each as a small section of how it fails. */
import { type Shortcut, temptingShortcuts } from '#catalogue'
import { failedSection, failedSize, type Stack } from '#papers'
import { labelOf, type Words } from '#words'
import { PartBlock, ShapesSvg } from '../../parts/index.ts'
import './shortcuts.css'

export type ShortcutsProps = { readonly stack: Stack; readonly words: Words }

const most = 4

export const Shortcuts = ({ stack, words }: ShortcutsProps) => {
  const found = temptingShortcuts(
    stack.layers.map(({ family }) => family),
    stack.existing,
  )
  return found.length === 0 ? null : (
    <PartBlock title={labelOf('buildUp.shortcuts')}>
      <ul className="shortcuts">
        {found.slice(0, most).map((shortcut) => (
          <Row key={shortcut.id} shortcut={shortcut} words={words} />
        ))}
      </ul>
    </PartBlock>
  )
}

const Row = ({ shortcut, words }: { readonly shortcut: Shortcut; readonly words: Words }) => {
  const name = labelOf(`shortcutName.${shortcut.id}`)
  return (
    <li className="shortcuts-row">
      <div className="shortcuts-drawing">
        <ShapesSvg
          drawing={failedSection(shortcut)}
          {...failedSize}
          label={`${name}: ${labelOf(`shortcutDrawing.${shortcut.fails}`)}`}
        />
      </div>
      <div>
        <h3 className="shortcuts-name">{name}</h3>
        <p>{words.sentence(`shortcut.${shortcut.id}`)}</p>
        <p className="shortcuts-source">{words.sentence('shortcut.source', { source: shortcut.source })}</p>
      </div>
    </li>
  )
}
