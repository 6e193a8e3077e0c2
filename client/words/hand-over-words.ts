import { own, type Words } from './word.ts'

/** From one phone to another with no signal. */
export const handOverWords = {
  'hand-over-title': own('No signal? Hand over'),
  'hand-over-hint': own('The other phone reads these codes in any order, then holds everything that this one holds.'),
  'hand-over-show': own('Show the codes'),
  'hand-over-hide': own('Put the codes away'),
  'hand-over-code': own('Code {n} of {of}'),
  'hand-over-next': own('Next code'),
  'hand-over-back': own('Previous code'),
  'hand-over-run': own('Show them in turn'),
  'hand-over-hold': own('Hold this one'),
  'hand-over-file': own('Save as a file'),
  'hand-over-secret': own('Whoever reads them gets in, so show them to those you mean.'),
  'take-over-title': own('From another phone'),
  'take-over-hint': own(
    'On the other phone: Share for the whole outing, Card for one player’s card; then “Show the codes”.',
  ),
  'take-over-camera': own('Read with the camera'),
  'take-over-stop': own('Stop the camera'),
  'take-over-no-camera': own('This page gets no camera. Take pictures of the codes and choose them, or use a file.'),
  'take-over-pick': own('Choose pictures of the codes, or the file'),
  'take-over-view': own('What the camera sees'),
  'take-over-some': own('{n} of {of} read. Missing: {missing}'),
  'take-over-another': own('That is a code of another hand-over. Started again with it: {n} of {of}.'),
  'take-over-none': own('No code of a hand-over in {name}.'),
  'take-over-damaged': own('The codes do not fit together. Read them again.'),
  'take-over-not a hand-over': own('That is no hand-over of an outing.'),
  'take-over-not a card': own('That is no card.'),
  'take-over-newer version': own('That comes from a newer version of this page.'),
} as const satisfies Words
