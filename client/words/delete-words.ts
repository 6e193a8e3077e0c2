import { own, type Words } from './word.ts'

/** Deleting an outing from the server, and taking it off one phone. */
export const deleteWords = {
  'delete-title': own('Delete the outing'),
  'delete-hint': own(
    'From the server, for good and for everybody. Phones that hold it keep what they have, but it can no longer be played together. To keep it, download it first under Card.',
  ),
  'delete-go': own('Delete it from the server'),
  'delete-sure': own('Delete it for good'),
  'delete-warning': own(
    '{outing}: {n} players. The server forgets it, invites and codes lead nowhere, and nobody can undo it.',
  ),
  'delete-done': own('Deleted from the server. This phone still holds the outing.'),
  'delete-fault-no server': own('The server cannot be reached. Nothing was deleted; try again with a signal.'),
  'delete-fault-not yours': own('Only the desk may delete the outing.'),
  'delete-fault-older server': own('This server is older and cannot delete. Ask whoever runs it.'),
  'delete-fault-failed': own('The server could not delete it. Try again later.'),
  'remove-go': own('Remove the outing from this phone'),
  'remove-sure': own('Remove it'),
  'remove-warning': own(
    '{outing} is then gone from this phone. It stays on the server and on other phones; an invite brings it back.',
  ),
  'remove-warning-alone': own(
    '{outing} is then gone from this phone, and {n} entries that are nowhere else with it. Send them first, hand over, or download the file under Card.',
  ),
  'remove-warning-deleted': own(
    '{outing} is then gone from this phone. The server no longer has it: this may be the last copy. Download it first under Card.',
  ),
  'remove-warning-card': own('{outing} is then gone from this phone.'),
  'remove-failed': own('This phone’s storage does not answer. Nothing was removed; try again.'),
} as const satisfies Words
