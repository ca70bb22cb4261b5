/** A part of a picture, each number a percentage of its width or height. */
export interface PictureRegion {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Somewhat more than the largest stored size, so that phones have memory for it. */
const MAX_SIDE = 2400;
/** So few pixels of a blurred part are left that nobody can be recognised in it. */
const BLURRED_PIXELS = 7;

/** Draws a photo as it will be seen, upright. @throws {Error} where the browser cannot read it. */
export async function drawFile(canvas: HTMLCanvasElement, file: Blob): Promise<void> {
  const bitmap = await createImageBitmap(file);
  const scale = Math.min(1, MAX_SIDE / Math.max(bitmap.width, bitmap.height));
  canvas.width = Math.round(bitmap.width * scale);
  canvas.height = Math.round(bitmap.height * scale);
  contextOf(canvas).drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
}

/** Leaves nothing but a part of the picture. */
export function cropTo(canvas: HTMLCanvasElement, region: PictureRegion): void {
  const { x, y, width, height } = inPixels(canvas, region);
  const kept = contextOf(canvas).getImageData(x, y, width, height);
  canvas.width = width;
  canvas.height = height;
  contextOf(canvas).putImageData(kept, 0, 0);
}

/** Blurs a part of the picture for good: what was there cannot be computed from what is left. */
export function blurIn(canvas: HTMLCanvasElement, region: PictureRegion): void {
  const { x, y, width, height } = inPixels(canvas, region);
  const scale = BLURRED_PIXELS / Math.max(width, height);
  const small = document.createElement("canvas");
  small.width = Math.max(1, Math.round(width * scale));
  small.height = Math.max(1, Math.round(height * scale));
  const shrinking = contextOf(small);
  shrinking.imageSmoothingQuality = "high";
  shrinking.drawImage(canvas, x, y, width, height, 0, 0, small.width, small.height);
  contextOf(canvas).drawImage(small, 0, 0, small.width, small.height, x, y, width, height);
}

/** The picture as a file to send. */
export function toFile(canvas: HTMLCanvasElement, name: string): Promise<File> {
  return new Promise((resolve, reject) => {
    const made = (blob: Blob | null) =>
      blob === null
        ? reject(new Error("no picture"))
        : resolve(new File([blob], `${name.replace(/\.[^.]*$/, "")}.jpg`, { type: "image/jpeg" }));
    canvas.toBlob(made, "image/jpeg", 0.92);
  });
}

function inPixels({ width, height }: HTMLCanvasElement, region: PictureRegion): PictureRegion {
  const left = Math.floor((region.x / 100) * width);
  const top = Math.floor((region.y / 100) * height);
  return {
    x: left,
    y: top,
    width: Math.max(1, Math.min(width - left, Math.ceil((region.width / 100) * width))),
    height: Math.max(1, Math.min(height - top, Math.ceil((region.height / 100) * height))),
  };
}

function contextOf(canvas: HTMLCanvasElement): CanvasRenderingContext2D {
  const context = canvas.getContext("2d");
  if (context === null) throw new Error("no canvas");
  return context;
}
