// Makes a checkout ready: packages as in the lock file and, with --build, a fresh dist/.
// This file keeps to plain syntax so that an old Node reads far enough to say that it is too old.

var NODE_FLOOR = 20
var major = Number(process.versions.node.split('.')[0])

if (major < NODE_FLOOR) {
  console.error(
    'Hardstand needs Node ' +
      NODE_FLOOR +
      ' or newer; this is Node ' +
      process.versions.node +
      '.\n' +
      'Install a newer Node, then run the command again.',
  )
  process.exitCode = 1
} else {
  import('./ready/main.mjs')
    .then((main) => main.ready({ build: process.argv.indexOf('--build') !== -1 }))
    .catch((error) => {
      console.error(error.sentence || error)
      process.exitCode = 1
    })
}
