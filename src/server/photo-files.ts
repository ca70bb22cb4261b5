/** Where photos are stored, by names such as `pictures/ID/960.webp`; nobody but Sizewright reads them. */
export interface PhotoFiles {
  /** Takes over a file of this machine's, which is whole. */
  readonly take: (path: string, name: string) => Promise<void>;
  readonly write: (name: string, bytes: Uint8Array) => Promise<void>;
  /** @returns null where there is none any more. @throws where the store does not answer. */
  readonly read: (name: string) => Promise<Buffer | null>;
  /** Deletes a file, if it is there. */
  readonly delete: (name: string) => Promise<void>;
  /** Deletes everything in a folder. */
  readonly deleteFolder: (folder: string) => Promise<void>;
  /** Deletes what was written into a folder before a moment. */
  readonly deleteBefore: (folder: string, moment: Date) => Promise<void>;
}
