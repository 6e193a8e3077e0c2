import { own, type Words } from './word.ts'

/** Between two threes, and the targets set before the first tee. */
export const resetWords = {
  'aims-what': own(
    'A target in strokes for each three, set before the first tee. It starts at your level: par plus the strokes you receive.',
  ),
  'aims-private': own('They stay on this phone; no other phone, board or file has them.'),
  'aims-title-of': own('{three}, {holes}'),
  'aims-three': own('par {par}, level {level}'),
  'aims-target-of': own('Target, {three}'),
  'aims-less': own('{three} one less'),
  'aims-more': own('{three} one more'),
  'aims-fixed': own('begun'),
  'aims-cue': own('Your cue'),
  'aims-cue-hint': own('One thought of your own. You read it before every three.'),
  'aims-done': own('To the hole'),
  'aims-own': own('Your target and cue'),
  'aims-closed': own('{three}: {strokes}, target {target}.'),
  'aims-against': own('{over}'),
  'aims-is-target': own('is your target; {level} keeps your level.'),
  'aims-none-level': own('{level} keeps your level.'),
  'aims-quoted': own('“{cue}”'),
  'aims-change': own('Change target or cue'),
  'reset-strokes': own('Strokes, {words}'),
  'three-closed': own('{three} closed.'),
  'fresh-three': own('Fresh three'),
  'reset-sum': own('Sum'),
  'to-hole': own('To hole {hole}'),
  'aims-title': own('Your six targets'),
  'aims-open': own('Targets'),
  'aims-set': own('Set targets'),
  'aims-line': own('{short}, your six targets'),
} as const satisfies Words
