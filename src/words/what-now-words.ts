/** What the screen for the minute it goes wrong says, and the clock of a pot. */

export const whatNowWords: Readonly<Record<string, string>> = {
  'whatnow.cautionPeople':
    'People before paint. Call the emergency number when you are in doubt. The product’s own safety sheet decides, and a doctor knows better than any list.',
  'whatnow.cautionWork':
    'Mask and gloves stay on, whatever the hurry, and so does the air. The product’s own data and safety sheets decide.',
  'whatnow.cautionFirst': 'Mask and gloves stay on.',
  'whatnow.assumed':
    'Hours, grits and shares here are common practice, assumed; the sheet of your product comes first.',
  'whatnow.writtenOnly': 'It stands in the log. No hours of the plan move because of it.',
  'whatnow.noCoat':
    'By plan and log no coat has been started, so it is written down without one and moves nothing.',
  'whatnow.filmStands': 'It stays on. Before the next coat the bad places are sanded with {spotGrit}.',
  'whatnow.filmWiped':
    'It is off again, wet. The same coat goes on once the surface has aired for {wipedWait}.',
  'whatnow.filmSanded':
    'It comes off with {sandGrit}, at the earliest after {sandWait}, and is put on again; its paint is bought again.',
  'whatnow.launchMoves': 'The launch moves from {fromAtMs} to {toAtMs}.',
  'whatnow.endMoves': 'The end of the work moves from {fromAtMs} to {toAtMs}.',
  'whatnow.endStays': 'The last day stays: {toAtMs}.',
  'whatnow.endUnknown': 'The plan has no last day yet; see under Days what is missing.',
  'whatnow.lost': '{name} finds no hours any more. Look at Days.',
  'whatnow.lostMore':
    '{count, plural, one {One more step finds} other {# more steps find}} no hours any more. Look at Days.',
  'whatnow.gone': 'No longer part of the work: {names}{more, plural, =0 {} other {, and # more}}.',
  'whatnow.more': 'And {count, plural, one {# step} other {# steps}} more.',
  'pot.over':
    'Time is out since {untilClock}. Stop using this pot: put it outside, spread thin, and mix a fresh one.',
  'pot.last': 'The last minutes: finish to a corner, and take no more from it.',
  'pot.induction': 'Let it stand until {fromClock}, then use it.',
  'pot.left': '{leftMinutes} left of {lifeMinutes}.',
  'pot.life': 'Good for {lifeMinutes} once it is mixed.',
  'pot.noLife': 'Its sheet gives no pot life, so there is no clock. Watch the pot: warm means stop.',
  'pot.atWarmth': 'Counted for {airC}; in a warmer pot it is shorter. The product’s own sheet decides.',
  'pot.cannotWake': 'This browser cannot keep the screen awake. Set the device itself so that it stays on.',
  'pot.notKept': 'This browser keeps nothing: closing the page stops the clock.',
}

export const whatNowLabels: Readonly<Record<string, string>> = {
  'whatNow.title': 'What went wrong?',
  'whatNow.say': 'Pick it; the first minutes count.',
  'whatNow.name': 'What now',
  'whatNow.other': 'Something else',
  'whatNow.now': 'Now',
  'whatNow.after': 'Then',
  'whatNow.never': 'Never',
  'whatNow.log': 'For the plan',
  'whatNow.coat': 'Which coat',
  'whatNow.film': 'What becomes of it',
  'whatNow.stands': 'It stands',
  'whatNow.wiped': 'Wiped off',
  'whatNow.sanded': 'Sanded off',
  'whatNow.share': 'How much of the surface',
  'whatNow.shareHelp': 'Left empty, the usual share is taken.',
  'whatNow.write': 'Write it in the log',
  'whatNow.written': 'Written in the log',
  'whatNow.planning': 'Planning again',
  'whatNow.toDays': 'See the days',
  'whatNow.moved': 'What moved',
  'whatNow.step': 'Work',
  'whatNow.was': 'Was',
  'whatNow.is': 'Now',
  'whatNow.new': 'new',
  'pot.useUntil': 'Use until',
  'pot.mixed': 'Mixed now',
  'pot.emptied': 'Pot is empty',
  'pot.away': 'Put away',
  'pot.pour': 'Pour',
  'pot.of': 'of',
  'pot.running': 'Pots running',
  'pot.leftWord': 'left',
  'pot.timeOut': 'Time is out',
}
