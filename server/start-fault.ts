/** Why the server does not start, in one line for whoever started it. */
export class StartFault extends Error {}
