// A call of the command that can't be meant: told with the usage, exit code 2.

/** Thrown by a handle when its words on the command line are wrong; the message is printed as it stands. */
export class WrongCall extends Error {}
