/** Sentences of what stands round every sheet, and what can go wrong with keeping and planning on a device. */
export const frameWords: Readonly<Record<string, string>> = {
  'frame.readOnly':
    'This job was written by a newer version of the program. It is shown, and cannot be changed here.',
  'frame.newer':
    'A newer version of the program is on the server, and everything here has been sent. Reload to use it.',
  'frame.clash':
    '{place}: you wrote {mine}, another device {theirs}; {now, select, cleared {the box is empty now} other {{stands} stands}}.',
  'frame.clashMore':
    '{count, plural, one {One more cell was} other {# more cells were}} written on two devices; settle what stands above first.',
  'frame.unknownJob':
    'No job of this name is on this device. It may not have been fetched yet, or the address is wrong.',
  'frame.unknownPage': 'Nothing is at this address.',
  'web.deviceFull':
    'This device has no room left, and the last edits are only in this page: free some space, and keep the page open until it says that they are kept.',
  'web.deviceFault':
    'This browser refuses to keep the last edits; they are only in this page. Keep it open until the server has them.',
  'web.serverJobFull':
    'The server takes no more of this job, which has grown beyond {mostMegabytes} MB: everything is kept on this device. Clear the longest remarks, or begin a new job for what is left to do.',
  'web.serverTakesLess':
    'This job is larger than the server takes at once, so it is kept on this device alone. Clear the longest remarks and it is sent by itself, or begin a new job for what is left to do.',
  'web.serverFull':
    'The server holds as many jobs as it can, so this one is kept on this device alone. Whoever runs the server has to make room.',
  'web.serverDiskFault':
    'The server could not write to its disk, so the newest edits are kept on this device alone. It is tried again by itself; whoever runs the server finds the reason where it was started.',
  'web.entryRefused':
    '{count, plural, one {One entry of the log is not taken by the server and is kept on this device alone: it may be too long.} other {# entries of the log are not taken by the server and are kept on this device alone: they may be too long.}} Write it again in shorter words.',
  'web.weatherTooLarge':
    'The weather file is too big for the server, so other devices do not get it and plan without: it is on this device alone. Cut the file to the months of the job and give it again.',
  'web.weatherFull':
    'The server holds as many weather files as it can, so the one of this job is on this device alone, and other devices plan without it. Whoever runs the server has to make room.',
  'web.weatherRefused':
    'The server does not take the weather of this job, so it is on this device alone, and other devices plan without it. Give the file again, and reload the page if that does not help.',
  'web.serverRefuses':
    'The server does not take the newest edits; they are kept on this device. Offer them again, and reload the page if that does not help.',
  'web.deviceLost':
    'What this browser kept for the page was taken away, so nothing is kept here any more. Leave the page open until the server has everything, then reload it.',
  'web.noDevice':
    'This browser lets the page keep nothing, so no job can be opened. A private window may be the reason.',
  'web.planFailed': 'The plan could not be made, and the last one still stands: {text}',
  'web.weatherOther':
    'The weather that was fetched is not the one this job names. Days are planned without it.',
}
