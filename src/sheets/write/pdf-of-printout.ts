import { PDFDocument, PDFName } from '@cantoo/pdf-lib';
import type { Lettering } from '../lettering/lettering.ts';
import { MM_PER_POINT } from '../lettering/styles.ts';
import type { Printout } from '../page/printout.ts';
import { embedFont } from './embed-font.ts';
import { PageContent, UsedFonts } from './page-content.ts';

/** A printout as a PDF of vectors and text. The same printout gives the same bytes. */
export async function pdfOfPrintout({ sheets, facts }: Printout, lettering: Lettering): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false });
  const { context } = document;
  const date = new Date(`${facts.date}T00:00:00Z`);
  document.setTitle(`${facts.plan}: ${facts.name}`);
  document.setCreator('Sternmount');
  document.setProducer('Sternmount');
  document.setLanguage('en');
  document.setCreationDate(date);
  document.setModificationDate(date);
  const fonts = new UsedFonts();
  const contents = sheets.map((sheet) => {
    const content = new PageContent(sheet.paper, lettering, fonts);
    for (const mark of sheet.marks) content.add(mark);
    return content.toString();
  });
  const used = [...fonts.fonts.values()].map(
    ({ file, name, glyphs }) => [name, embedFont(context, file, glyphs.values())] as const,
  );
  for (const [i, { paper }] of sheets.entries()) {
    const page = document.addPage([paper.width / MM_PER_POINT, paper.height / MM_PER_POINT]);
    for (const [name, ref] of used) page.node.setFontDictionary(PDFName.of(name), ref);
    page.node.addContentStream(context.register(context.flateStream(contents[i] ?? '')));
  }
  return document.save({ addDefaultPage: false });
}
