/** Gives the numbers 0 to count - 1 by least degree, of equal ones the one whose degree was told last. */
export class DegreeQueue {
  private readonly waiting: number[][] = [];
  private least = 0;
  private readonly degree: Int32Array;

  /** `degree` is read again whenever a number is told or taken. */
  constructor(degree: Int32Array) {
    this.degree = degree;
    for (let n = degree.length - 1; n >= 0; n--) this.tell(n);
  }

  /** The degree of n has changed. */
  tell(n: number): void {
    const degree = this.degree[n]!;
    while (this.waiting.length <= degree) this.waiting.push([]);
    this.waiting[degree]!.push(n);
    this.least = Math.min(this.least, degree);
  }

  /** Takes out the number of least degree, told once or several times; a taken one has to get degree -1. */
  take(): number {
    for (; this.least < this.waiting.length; this.least++) {
      const bucket = this.waiting[this.least]!;
      for (let n = bucket.pop(); n !== undefined; n = bucket.pop()) {
        if (this.degree[n] === this.least) return n;
      }
    }
    return -1;
  }
}
