/** Sentences of the list of jobs, of a new job, and of the sign-in. */
export const jobsWords: Readonly<Record<string, string>> = {
  'jobs.title':
    '{count, plural, =0 {No boat on the hardstand yet} one {One boat on the hardstand} other {# boats on the hardstand}}',
  'jobs.say': 'A job opens with today’s work. It is kept on this device, and works without a signal.',
  'jobs.onlyHere':
    '{count, plural, one {One job has edits that are only on this device.} other {# jobs have edits that are only on this device.}} {reach, select, there {They are being sent.} other {They are sent by themselves when the server is in reach.}}',
  'jobs.none': 'Twelve questions make a whole plan: areas, litres, days and what to buy.',
  'jobs.signIn':
    'The server asks for the passphrase of the shop. What is on this device can be used meanwhile.',
  'jobs.noServer': 'The server does not answer.',
  'import.say':
    'Or bring one from a file: a job document, YAML or JSON, with its hourly weather (CSV) if there is one. Pick both at once, or drop them on this list.',
  'import.refused':
    '{count, plural, one {The file is not taken; one thing has to be put right first:} other {The file is not taken; # things have to be put right first:}}',
  'import.more': '{count, number} more like these are not shown.',
  'import.noJob': 'No job document is among the files. Pick one that ends in .yaml, .yml or .json.',
  'import.oneAtATime': 'This is one file too many. Bring one job at a time, with one file of weather.',
  'import.failed': 'The file could not be read: {text}',
  'import.wantsWeather':
    'The job goes by the weather in {file}, which was not given. Pick it together with the job, or take the job without hours to paint in.',
  'newjob.say':
    'Guess where you do not know: every guess is listed afterwards and can be changed. Write sizes as you would say them, such as 25 ft 4 in or 7.72 m.',
  'newjob.wrong':
    '{count, plural, one {One answer has to be looked at again.} other {# answers have to be looked at again.}}',
  'newjob.needed': 'This has to be known.',
  'newjob.where': 'Sun and dew are worked out for the place; without one the plan leaves the sun out.',
  'newjob.twoPart':
    'Two-part finishes hold isocyanates: an air-fed mask, trained people and nobody else in the shed. One-part is what most people can put on at home.',
}
