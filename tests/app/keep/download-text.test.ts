import { expect, it, vi } from 'vitest';
import { downloadText } from '../../../src/app/keep/download-text.ts';

it('hands the text over under its name, and gives its address back later', async () => {
  const blobs: Blob[] = [];
  const link = { href: '', download: '', click: vi.fn(), remove: vi.fn() };
  const later: (() => void)[] = [];
  const page = {
    document: {
      createElement: () => link,
      body: { append: vi.fn() },
    },
    URL: {
      createObjectURL: (blob: Blob) => {
        blobs.push(blob);
        return 'blob:1';
      },
      revokeObjectURL: vi.fn(),
    },
    setTimeout: (run: () => void) => later.push(run),
  };
  downloadText('sloop.plan.json', '{"ü":1}', page as unknown as Parameters<typeof downloadText>[2]);
  expect([link.href, link.download]).toEqual(['blob:1', 'sloop.plan.json']);
  expect(link.click).toHaveBeenCalledOnce();
  expect(await blobs[0]?.text()).toBe('{"ü":1}');
  expect(page.URL.revokeObjectURL).not.toHaveBeenCalled();
  for (const run of later) run();
  expect(page.URL.revokeObjectURL).toHaveBeenCalledWith('blob:1');
});
