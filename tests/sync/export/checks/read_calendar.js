// node read_calendar.js FILE: one JSON string a line in, an iCalendar file each; out, for each, its events as two
// readers understand them: {events: [{uid, sequence, status, summary, description, starts}], days: [[...], ...]}
//   starts  instants in UTC, by ical.js, with the file's own VTIMEZONE
//   days    local times "1997-09-02T09:00:00" of each event, by rrule, which knows no zones; null: it is in UTC
'use strict';
const fs = require('fs');
const ICAL = require('ical.js').default || require('ical.js');
const {rrulestr} = require('rrule');

const kMost = 2000;

// What the clock shows in `zone`, by the runtime's own zones (ICU).
function localIn(zone, utc) {
  const parts = new Intl.DateTimeFormat('en-CA', {timeZone: zone, hourCycle: 'h23', year: 'numeric', month: '2-digit',
    day: '2-digit', hour: '2-digit', minute: '2-digit', second: '2-digit'}).formatToParts(utc);
  const of = type => parts.find(p => p.type === type).value;
  return of('year') + of('month') + of('day') + 'T' + of('hour') + of('minute') + of('second');
}

function byIcal(vevent) {
  const event = new ICAL.Event(vevent);
  const starts = [];
  if (!event.isRecurring()) {
    starts.push(event.startDate.toJSDate().toISOString());
  } else {
    const iterator = event.iterator();
    for (let next = iterator.next(); next && starts.length < kMost; next = iterator.next())
      starts.push(next.toJSDate().toISOString());
  }
  return {uid: event.uid, sequence: event.sequence, status: vevent.getFirstPropertyValue('status'),
    summary: event.summary, description: event.description, starts};
}

// Local times are given to rrule as if they were UTC; UNTIL, which is UTC, is put on the same clock.
function byRrule(lines) {
  const text = [];
  let zone = 'UTC';
  for (const line of lines) {
    const match = /^(DTSTART|RRULE|RDATE|EXDATE)(?:;TZID=([^:;]+))?:(.*)$/.exec(line);
    if (!match) continue;
    if (match[2]) zone = match[2];
    if (match[1] === 'RRULE') {
      text.push('RRULE:' + match[3].replace(/UNTIL=(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)Z/, (_, ...n) =>
        'UNTIL=' + localIn(zone, new Date(Date.UTC(n[0], n[1] - 1, n[2], n[3], n[4], n[5]))) + 'Z'));
    } else {
      text.push(match[1] + ':' + match[3].split(',').map(v => v + 'Z').join(','));
    }
  }
  if (text[0].endsWith('ZZ')) return null;
  // rrule takes DTSTART as the first only where there is a rule; the standard always does.
  if (!text.some(t => t.startsWith('RRULE'))) text.push('RDATE:' + text[0].slice('DTSTART:'.length));
  const set = rrulestr(text.join('\n'), {forceset: true});
  return [...new Set(set.all((_, n) => n < kMost).map(d => d.toISOString().slice(0, 19)))].sort();
}

for (const line of fs.readFileSync(process.argv[2], 'utf8').split('\n')) {
  if (line === '') continue;
  const text = JSON.parse(line);
  const calendar = new ICAL.Component(ICAL.parse(text));
  ICAL.TimezoneService.reset();
  for (const zone of calendar.getAllSubcomponents('vtimezone')) ICAL.TimezoneService.register(new ICAL.Timezone(zone));
  const unfolded = text.replace(/\r\n[ \t]/g, '').split('\r\n');
  const days = [];
  for (let i = 0; i < unfolded.length; ++i) {
    if (unfolded[i] === 'BEGIN:VEVENT') days.push(byRrule(unfolded.slice(i, unfolded.indexOf('END:VEVENT', i))));
  }
  const events = calendar.getAllSubcomponents('vevent').map(byIcal);
  process.stdout.write(JSON.stringify({events, days}) + '\n');
}
