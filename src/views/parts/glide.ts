let timer: ReturnType<typeof setTimeout> | undefined;

const LONGER_THAN_A_GLIDE = 400;

/** Lets pegs and drawing glide for the change a stepper or a key makes now; a drag never calls this. */
export function glide(): void {
  document.documentElement.dataset.glide = '';
  clearTimeout(timer);
  timer = setTimeout(() => delete document.documentElement.dataset.glide, LONGER_THAN_A_GLIDE);
}
