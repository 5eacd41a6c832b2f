/** Sentences of the server: what it refuses and why, and what keeps it from starting. */

const refused: Readonly<Record<string, string>> = {
  'server.addressNotRead': 'The address that was asked for cannot be read. Open the start page again.',
  'server.batchTooLong':
    'A batch of {count, plural, one {# entry} other {# entries}} is too long. Send at most {mostCount} at once.',
  'server.bodyNotUnderstood': 'What was sent is not understood at “{at}”. Reload the page and try again.',
  'server.bodyTooLarge': 'What was sent is larger than {mostKilobytes} kB. Send less at once.',
  'server.cursorNotRead': 'The place in the log from which to read on is not a number. Reload the page.',
  'server.documentFull':
    'The job has grown beyond {mostMegabytes} MB, so the last change is not kept. Begin a new job for what is left to do.',
  'server.documentRefused':
    'This part of a job is not open to you. Sign in with another passphrase to see it.',
  'server.documentsFull':
    'The server holds {mostCount, plural, one {# document} other {# documents}} already and takes no more. Start another server with a new data folder.',
  'server.hostNotAllowed':
    'The server does not go by the name “{host}”. Use the address it printed when it started, or give it the name with --name.',
  'server.jsonNotRead': 'What was sent is not JSON. Reload the page and try again.',
  'server.methodNotAllowed': '{method} cannot be done with this address.',
  'server.noPassphrase': 'This server asks for no passphrase. Reload the page.',
  'server.notFound': 'There is nothing at this address.',
  'server.originMissing': 'The sender does not say which page it is, so nothing is taken from it.',
  'server.originNotAllowed': 'Another page, {origin}, asked for this. Only the pages of this server may.',
  'server.pagesMissing': 'The pages of the program are not built. Run npm start in the checkout.',
  'server.passphraseWrong': 'That is not the passphrase. Try again.',
  'server.requestNotRead': 'The request cannot be read.',
  'server.signInFirst': 'Sign in first.',
  'server.socketOnly': 'This address is only for live documents. Open the start page instead.',
  'server.storeFailed':
    'The server could not write to its disk or read from it, so nothing was changed. Whoever runs it finds the reason where it was started.',
  'server.tooManySockets':
    'As many pages as the server takes, {mostCount}, are connected. Close one elsewhere.',
  'server.tooManyTries':
    'Too many wrong passphrases. Wait {seconds, plural, one {# second} other {# seconds}} and try again.',
  'server.typeNotTaken': 'Only {type} is taken here.',
  'server.weatherDiffers':
    'The weather that was sent has the fingerprint {found}, and was called {wanted}. Open the file again.',
  'server.weatherFull':
    'The server keeps {mostCount, plural, one {# weather file} other {# weather files}} already and takes no more.',
  'server.weatherNotKept': 'This weather is not on the server yet. It comes with the device that has it.',
  'server.weatherNotRead':
    'The weather that was sent has {count, plural, one {# error} other {# errors}} in it and is not kept. Check the file with hardstand weather.',
}

const setUp: Readonly<Record<string, string>> = {
  'server.hostNotHere':
    'This computer has no address {host} to listen on. Use 127.0.0.1, 0.0.0.0 or one of its own.',
  'server.passphraseNeeded':
    'On {host} others could reach the jobs. Give a passphrase with --passphrase-file first, or leave --host out.',
  'server.passphraseTooShort':
    'A passphrase is too short. Use at least {leastLetters, plural, one {# letter} other {# letters}}.',
  'server.passphrasesAlike':
    'The passphrase for everything and the one for the work alone are the same. Use two, or leave the second out.',
  'server.portForbidden': 'Port {port} may not be used by you. Choose one over 1023 with --port.',
  'server.portTaken':
    'Port {port} is taken by another program. Close it, or choose another port with --port.',
  'server.sessionKeyTooShort':
    'The key for signing in is shorter than {leastBytes} bytes. Delete session.key in the data folder, and a new one is made.',
  'server.workPassphraseAlone':
    'There is a passphrase for the work alone and none for everything. Give both, or neither.',
}

const told: Readonly<Record<string, string>> = {
  'server.notCompacted':
    'The changes of {document} could not be put together: {text}. They are kept one by one.',
  'server.ownFault': 'The server made a mistake of its own. Please report this: {text}',
  'server.updateDamaged':
    'Change {at} of {document} cannot be read and is left out. Run hardstand doctor on the data folder.',
}

export const serverWords: Readonly<Record<string, string>> = { ...refused, ...setUp, ...told }
