/** What `dyelot` prints for --help and beside a wrong call. */
export const USAGE = `dyelot: real colours from photos, and a small seasonal wardrobe judged by them. Nothing leaves this machine.

  dyelot serve [--home FOLDER] [--port N] [--share]      the page, on this machine (or paired devices)
  dyelot demo [--json]                                   a made-up wardrobe in a temporary home, and its report
  dyelot report [--home FOLDER] [--season NAME] [--json] the season's report
  dyelot read PHOTO... [--shades N] [--neutral X,Y[,L]]... [--at X,Y]... [--json]
                                                         the colours of the clothes in each photo
  dyelot palette PHOTO... [--json]                       a palette derived from inspiration pictures
  dyelot check PHOTO --palette FILE [--kind KIND] [--json]
                                                         how far one piece lies within a palette
  dyelot backup FILE [--home FOLDER]                     everything kept, in one archive
  dyelot restore FILE --home FOLDER                      an archive into an empty home, checked first

FILE for --palette is what "dyelot palette --json" prints. X,Y are pixels of the upright picture; L is the lightness of
the neutral you point at (95 or "white" for white paper, 50 or "grey" for a grey card; left out: by how bright it is in
the picture). Point at a white and a grey where both lie there. A colour on a screen is not the cloth.
Exit status: 0 all went well, 1 a photo or task failed, 2 the call was wrong.`;

/** A call that cannot be understood; the command ends with status 2. */
export class UsageError extends Error {}
