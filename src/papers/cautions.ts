/** Cautions in words: the whole sentence, what is worn, which steps it stands before. */
import type { Plan } from '#plan'
import type { Kit } from './kit.ts'
import type { Panel, PanelText } from './signal-panel.ts'

export type Caution = Plan['cautions']['cautions'][number]

export const signalWord = (kit: Kit, severity: Caution['severity']): string =>
  kit.say.label(`signal.${severity}`)

/** What is worn or stands ready, as one line; empty when there is nothing. */
export function protectionLine({ say }: Kit, protection: readonly string[]): string {
  if (protection.length === 0) return ''
  const words = protection.map((key) => say.label(`protection.${key}`))
  return say.sentence('paper.protection', { words: words.join('; ') })
}

export function cautionPanel(kit: Kit, caution: Caution): Panel {
  const { say } = kit
  const protection = protectionLine(kit, caution.protection)
  const scope =
    caution.steps.length === 0
      ? say.label('paper.wholeJob')
      : say.sentence('paper.beforeSteps', { count: caution.steps.length })
  const body: readonly PanelText[] = [
    { text: say.sentence(caution.code, caution.data), style: 'small' },
    ...(protection === '' ? [] : [{ text: protection, style: 'smallStrong' as const }]),
    { text: scope, style: 'caption' },
  ]
  return { signal: caution.severity, word: signalWord(kit, caution.severity), body }
}
