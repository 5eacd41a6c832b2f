/** Sentences about weather services: what keeps a forecast from coming, and what was done instead. */
export const feedWords: Readonly<Record<string, string>> = {
  'feeds.off':
    'Asking weather services is switched off (HARDSTAND_FEEDS is off). Give a weather file instead, or switch it on.',
  'feeds.noSpot': 'The job does not say where the boat stands. Give the latitude and longitude of the place.',
  'feeds.serviceUnknown': 'There is no weather service “{found}”. Known are {known}.',
  'feeds.unreachable':
    '{host} cannot be reached. Without a network, give a weather file, or read air and humidity in the yard.',
  'feeds.late':
    '{host} did not answer within {seconds, plural, one {# second} other {# seconds}}. Try again later.',
  'feeds.busy': '{host} takes no questions now (answer {status, number}). Try again in an hour.',
  'feeds.refused': '{host} has no forecast for this place (answer {status, number}). Ask another service.',
  'feeds.tooLarge': '{host} sent more than {mostBytes} bytes, which is no forecast. Ask another service.',
  'feeds.answerOdd':
    '{host} answered with something that is no forecast that can be read. Ask another service.',
  'web.forecastNoServer':
    'Your own server cannot be reached, and it is the one that asks. Give a weather file, or try again with a signal.',
  'feeds.stale': 'The service cannot be reached now. This forecast is of {fetchedAtMs}.',
}
