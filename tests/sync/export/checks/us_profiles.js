// Each profile that a resource claims in meta.profile, held to what the profile asks for; a claim of any other is
// wrong by itself. Sources:
//   US Core Patient            hl7.org/fhir/us/core, StructureDefinition us-core-patient: identifier 1..* with system
//                              and value, name 1..* with us-core-6 (us-core-8 up to 4.0.0), gender 1..1; absent name by
//                              the extension data-absent-reason
//   US Core Care Plan          the same, us-core-careplan: text with status generated or additional and div, category
//                              assess-plan, subject a US Core Patient
//   PA Care Plan               hl7.org/fhir/us/physical-activity (1.0.0), pa-careplan: US Core Care Plan, category
//                              PhysicalActivity, intent plan, author and time in each note
//   PA Observation Base,       the same, pa-observation-base and pa-observation-activity-measure: both categories, code,
//   Activity Measure           subject a US Core Patient, effective dateTime or Period with both ends, value Quantity or
//                              CodeableConcept, 55411-3 in min (its table of activity-based measures)
// Not held to: value sets of extensible bindings, and must-support, which is about programs and not about files.
'use strict';

const kAbsent = 'http://hl7.org/fhir/StructureDefinition/data-absent-reason';
const kActivity = 'http://hl7.org/fhir/us/physical-activity/CodeSystem/pa-temporary-codes';
const kUsPatient = 'http://hl7.org/fhir/us/core/StructureDefinition/us-core-patient';
const kNpi = 'http://hl7.org/fhir/sid/us-npi';

const list = value => Array.isArray(value) ? value : [];
const has = (value, key) => value !== undefined && value !== null && value[key] !== undefined;
const hasCode = (concept, system, code) =>
    has(concept, 'coding') && list(concept.coding).some(c => c.system === system && c.code === code);
const times = (resource, system, code) => list(resource.category).filter(c => hasCode(c, system, code)).length;
const claims = (resource, profile) => has(resource.meta, 'profile') && list(resource.meta.profile).includes(profile);
// us-core-6 and us-core-8: one of them, and not both.
const namedOrAbsent = name => (has(name, 'family') || has(name, 'given')) !==
    list(name.extension).some(e => e.url === kAbsent && typeof e.valueCode === 'string');
// PA Reference, RESTful or logical: a reference, or a national provider number with a display.
const restOrLogical = ref => has(ref, 'reference') ||
    (has(ref, 'identifier') && ref.identifier.system === kNpi && has(ref.identifier, 'value') && has(ref, 'display'));
const goodNote = note => has(note, 'authorReference') && restOrLogical(note.authorReference) && has(note, 'time');
const wholeDay = text => typeof text === 'string' && text.length >= 10;

function aboutUsPatient(resource, bundle) {
  const target = bundle.get(has(resource.subject, 'reference') ? resource.subject.reference : '');
  return target !== undefined && claims(target, kUsPatient);
}

// [what must hold, (resource, resources by fullUrl) => boolean]
const kUsCorePatient = [
  ['identifier with system and value', r => list(r.identifier).length >= 1 &&
      r.identifier.every(i => has(i, 'system') && has(i, 'value'))],
  ['name, or why there is none (us-core-6)', r => list(r.name).length >= 1 && r.name.every(namedOrAbsent)],
  ['gender', r => ['male', 'female', 'other', 'unknown'].includes(r.gender)],
];
const kUsCareplan = [
  ['text.status', r => has(r.text, 'status') && ['generated', 'additional'].includes(r.text.status)],
  ['text.div', r => has(r.text, 'div') && /^<div xmlns="http:\/\/www\.w3\.org\/1999\/xhtml">.*\S.*<\/div>$/s.test(r.text.div)],
  ['category assess-plan', r => times(r, 'http://hl7.org/fhir/us/core/CodeSystem/careplan-category', 'assess-plan') === 1],
  ['subject', aboutUsPatient],
];
const kPaCareplan = [
  ...kUsCareplan,
  ['no implicitRules', r => !has(r, 'implicitRules')],
  ['no modifierExtension', r => !has(r, 'modifierExtension')],
  ['intent plan', r => r.intent === 'plan'],
  ['category PhysicalActivity', r => times(r, kActivity, 'PhysicalActivity') === 1],
  ['notes with author and time', r => list(r.note).every(goodNote)],
];
const kPaMeasure = [
  ['no implicitRules', r => !has(r, 'implicitRules')],
  ['no modifierExtension', r => !has(r, 'modifierExtension')],
  ['status', r => ['final', 'amended', 'corrected', 'entered-in-error'].includes(r.status)],
  ['category activity', r => times(r, 'http://terminology.hl7.org/CodeSystem/observation-category', 'activity') === 1],
  ['category PhysicalActivity', r => times(r, kActivity, 'PhysicalActivity') === 1],
  ['code', r => has(r.code, 'coding')],
  ['subject', aboutUsPatient],
  ['no focus, bodySite, specimen', r => !has(r, 'focus') && !has(r, 'bodySite') && !has(r, 'specimen')],
  ['effective', r => wholeDay(r.effectiveDateTime) ||
      (has(r, 'effectivePeriod') && wholeDay(r.effectivePeriod.start) && wholeDay(r.effectivePeriod.end))],
  ['value', r => !Object.keys(r).some(k => /^value/.test(k) && k !== 'valueQuantity' && k !== 'valueCodeableConcept')],
  ['value in UCUM', r => !has(r, 'valueQuantity') || (r.valueQuantity.system === 'http://unitsofmeasure.org' &&
      has(r.valueQuantity, 'value') && has(r.valueQuantity, 'code') && !has(r.valueQuantity, 'comparator'))],
  ['duration in minutes', r => !hasCode(r.code, 'http://loinc.org', '55411-3') ||
      (has(r, 'valueQuantity') && r.valueQuantity.code === 'min')],
  ['performer', r => list(r.performer).every(restOrLogical)],
  ['notes with author and time', r => list(r.note).every(goodNote)],
];
const kProfiles = new Map([
  [kUsPatient, ['Patient', kUsCorePatient]],
  ['http://hl7.org/fhir/us/physical-activity/StructureDefinition/pa-careplan', ['CarePlan', kPaCareplan]],
  ['http://hl7.org/fhir/us/physical-activity/StructureDefinition/pa-observation-activity-measure',
   ['Observation', kPaMeasure]],
]);

// What is wrong with the claims of one bundle; empty: nothing, or nothing is claimed.
function checkClaims(bundle) {
  const wrong = [];
  const byUrl = new Map();
  const entries = list(bundle.entry).filter(e => e && e.resource);
  for (const entry of entries) byUrl.set(entry.fullUrl, entry.resource);
  for (const {resource} of entries) {
    for (const url of has(resource.meta, 'profile') ? list(resource.meta.profile) : []) {
      const where = resource.resourceType + '/' + resource.id;
      if (!kProfiles.has(url)) { wrong.push(where + ' claims ' + url + ', which nobody checks'); continue; }
      const [type, rules] = kProfiles.get(url);
      if (resource.resourceType !== type) wrong.push(where + ' claims a profile of ' + type);
      for (const [what, holds] of rules) {
        if (!holds(resource, byUrl)) wrong.push(where + ' ' + url.split('/').pop() + ': ' + what);
      }
    }
  }
  return wrong;
}

module.exports = {checkClaims};
