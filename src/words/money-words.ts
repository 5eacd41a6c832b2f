/** Sentences about prices, sums and quotes. */
export const moneyWords: Readonly<Record<string, string>> = {
  'money.notShown':
    'No prices are given, so nothing is said about money. Add rates and prices for an estimate.',
  'money.priceMissing':
    'No price is given for {name, select, none {{line}} other {{name}}}, so the total is too low. Add its price.',
  'money.lineOutOfRange':
    'The line {name, select, none {{line}} other {{name}}} cannot be summed: its quantity or price is not a usable number. Check both.',
  'money.shareOutOfRange': 'The {name} share is {share}. Give it as 0 % to 100 %.',
  'money.sumOutOfRange':
    'The sum is too large to be kept to the coin. Check quantities and prices for a slip.',
  'money.forecastOverQuote':
    'The job is now expected to cost {forecastCoins}, {overShare} over the quote of {quoteCoins}. Talk to the owner before it grows.',
  'money.forecastFarOverQuote':
    'The job is now expected to cost {forecastCoins}, {overShare} over the quote of {quoteCoins}. Stop, tell the owner and have a change order signed.',
}
