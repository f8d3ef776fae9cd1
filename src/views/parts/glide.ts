let timer: ReturnType<typeof setTimeout> | undefined;

const LONGER_THAN_A_GLIDE = 400;

/**
 * Lets pegs and drawing glide for the change that a stepper or a key makes now; a drag never calls this. Nothing glides
 * for readers who asked for less motion.
 */
export function glide(): void {
  if (window.matchMedia('(prefers-reduced-motion: reduce)').matches) return;
  document.documentElement.dataset.glide = '';
  clearTimeout(timer);
  timer = setTimeout(() => delete document.documentElement.dataset.glide, LONGER_THAN_A_GLIDE);
}
