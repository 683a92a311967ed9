/** The text of a file that somebody chose. Bytes that are no UTF-8 are taken as the older Windows letters, as spreadsheets write them. */
export async function textOf(file) {
  const bytes = await file.arrayBuffer();
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
