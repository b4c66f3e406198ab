/** Why the system would not read or write a file, as a person would tell it apart. */
export type FileTrouble =
  | 'full'
  | 'quota'
  | 'readOnly'
  | 'notAllowed'
  | 'missing'
  | 'device'
  | 'link'
  | 'notAFile'
  | 'gone'
  | 'replaced'
  | 'taken'
  | 'slow'
  | 'other';
