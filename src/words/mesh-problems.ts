/** Sentences about files of 3D scans. */
export const meshProblems: Readonly<Record<string, string>> = {
  'intake.meshEmpty': 'The file is empty. Export the scan again as STL, OBJ, PLY or GLB.',
  'intake.meshTooLarge':
    'The file holds {sizeBytes} bytes; at most {mostBytes} are read. Thin the scan out to a million triangles: for a hull that is plenty.',
  'intake.meshUnknown':
    'This is no 3D scan that can be read. Export it as STL, OBJ, PLY or GLB; the ending of the name does not matter.',
  'intake.meshPacked': 'The file is packed ({found}). Unpack it and choose the scan inside.',
  'intake.meshJsonOnly':
    'The scan is in several files. Export it as GLB, which holds everything in one file, or as STL, OBJ or PLY.',
  'intake.meshElsewhere':
    'The triangles are in another file. Export the scan as GLB with everything in one file.',
  'intake.meshCompressed':
    'The triangles are compressed ({found}), which is not read. Export the scan again without compression.',
  'intake.meshNeeds':
    'The file uses {found}, which is not read. Export the scan again in plain form, or as STL, OBJ or PLY.',
  'intake.meshVersion': 'The file is of version {found}; version 2 of GLB is read. Export the scan again.',
  'intake.meshCutShort':
    'The file ends too early: it holds {sizeBytes} bytes{neededBytes, select, none {} other { and says that it has {neededBytes}}}. Fetch or export it again.',
  'intake.meshTooManyTriangles':
    'The scan has more than {most} triangles. Thin it out to a million: for a hull that is plenty.',
  'intake.meshTooManyPoints':
    'The scan has more than {most} points. Thin it out to half a million: for a hull that is plenty.',
  'intake.meshTooManyRows':
    'The file has more than {most} rows of “{found}”. Export the scan alone, without them.',
  'intake.meshTooManyPieces': 'The scan is in more than {most} pieces. Join them before it is exported.',
  'intake.meshPointsOnly':
    'The scan has only points and no triangles between them. Export it as a mesh, not as a point cloud.',
  'intake.meshNothing': 'There is no triangle in the file. Export the scan again as a mesh.',
  'intake.meshNumberNotRead': '“{found}” stands where a number belongs. Export the scan again.',
  'intake.meshNotFinite': 'A point has “{found}” for a place. Clean the scan up and export it again.',
  'intake.meshTooFar':
    'A point lies at {found}, farther out than {most}. Move the scan to its own origin and export it again.',
  'intake.meshIndex':
    'A triangle goes to point {found} of {points}, which is not there. Export the scan again.',
  'intake.meshIndexOdd': '“{found}” stands where the number of a point belongs. Export the scan again.',
  'intake.meshCorners': 'A face does not have the corners that it needs. Export the scan again as triangles.',
  'intake.meshWord': '“{found}” does not belong in a file of STL. Export the scan again.',
  'intake.meshHeader': 'The header is not understood at “{found}”. Export the scan again.',
  'intake.meshHeaderTooLong':
    'The description in the file holds {sizeBytes} bytes; at most {mostBytes} are read. Export the scan alone, without the scene around it.',
  'intake.meshPart': 'The description in the file is wrong at {part}. Export the scan again.',
  'intake.meshStopped': 'Reading was stopped.',
  'intake.meshSplit':
    '{count, plural, one {# face had} other {# faces had}} more than three corners and was taken as triangles.',
  'intake.meshLeftOver': 'Behind the triangles stand {sizeBytes} more bytes, which were left out.',
}
