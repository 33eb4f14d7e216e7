// node check_fhir.js FILE: one bundle a line in, one line of findings a bundle out.
'use strict';
const fs = require('fs');
const {checkBundle} = require('./fhir_checks.js');

for (const line of fs.readFileSync(process.argv[2], 'utf8').split('\n')) {
  if (line === '') continue;
  process.stdout.write(JSON.stringify(checkBundle(JSON.parse(line))) + '\n');
}
