const REASONS: Record<string, string> = {
  ENOSPC: "the disk is full; make room",
  EDQUOT: "your share of the disk is used up; make room",
  EACCES: "you may not write there; name another folder",
  EPERM: "you may not write there; name another folder",
  EROFS: "the disk can only be read; name another folder",
  ENOTDIR: "a part of the path is a file; name another folder",
  ENAMETOOLONG: "the name is too long; name another folder",
  ELOOP:
    "a part of the path is a link that leads round in a ring, or one that must not be followed; name another folder",
  EFBIG: "the file is larger than is allowed here; raise that limit",
  EMFILE: "too many files are open; close other programs",
  EADDRINUSE: "another program uses that port; name another one with --port",
  EIO: "the disk does not answer as it should; check it",
};

const NOTHING_THERE = "nothing can be made there; name another folder";

/** What a failure of the system means to a person, in one line with its remedy; null when it is none of the known ones. */
export function diskWords(error: unknown): string | null {
  const { code, path, syscall } = error as NodeJS.ErrnoException;
  // Of a file that is read it says something else.
  const reason = code === "ENOENT" && syscall === "mkdir" ? NOTHING_THERE : REASONS[code ?? ""];
  return reason === undefined ? null : `${path === undefined ? "" : `${path}: `}${reason}, then run it again.`;
}
