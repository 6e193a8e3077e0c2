/** A reason why the set-up cannot go on, as the one line that a person reads. */
export class SetupFault extends Error {}
