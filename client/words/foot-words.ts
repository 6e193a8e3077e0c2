import { own, type Words } from './word.ts'

/** Where the scores are, on every page of an outing. */
export const footWords = {
  newer: own('Something here was written by a newer version. Totals may differ.'),
  'foot-phone': own('on this phone'),
  'foot-saving': own('saving on this phone'),
  'foot-failing': own('not saved: this phone’s storage is full or closed'),
  'foot-elsewhere': own(
    'not saved: go on in the other open page of this outing, which holds scores that are not saved',
  ),
  'foot-to-send': own('{n} to send'),
  'foot-server': own('on the server'),
  'foot-deleted': own('deleted from the server'),
  'foot-not-on-server': own('{n} not on the server'),
  'foot-card': own('a card taken home, to be read'),
  'foot-away': own('not connected to the server'),
} as const satisfies Words
