/**
 * Seven networks of a mast, its bonds and its electrodes under a stroke. Peaks and their times were worked out apart from this
 * program: by a three-stage Radau IIA solve of the same equations in numpy, on which a circuit simulator agreed to 1.7e-5; so were potentials and
 * currents at 1 A of direct current.
 */
export interface LightningCase {
  readonly title: string;
  readonly into: string;
  readonly wave: 'first positive' | 'first negative' | 'subsequent' | '8/20' | '1.2/50';
  readonly peakA: number;
  readonly windowUs: number;
  /** name from-to milliohm microhenry */
  readonly branches: string;
  /** node ohm */
  readonly electrodes: string;
  /** what kilovolt or kiloampere microsecond */
  readonly peaks: string;
  /** At 1 A of direct current: node volt, then branch ampere. */
  readonly direct: string;
}

export const lightningCases: readonly LightningCase[] = [
  {
    title: 'single path: mast top, down conductor, one electrode',
    into: 'T',
    wave: 'first positive',
    peakA: 100e3,
    windowUs: 100,
    branches: 'b1 T-B 13 13',
    electrodes: 'B 10',
    peaks: 'v(T) 1003.51 29.621; v(B) 1001.27 31.428; v(T,B) 178.144 18.601; i(b1) 100.127 31.428',
    direct: 'T 10.013000, B 10.000000; b1 1.000000',
  },
  {
    title: 'mast with its own electrode, bonded 15 m to a second one',
    into: 'T',
    wave: 'subsequent',
    peakA: 25e3,
    windowUs: 6,
    branches: 'b1 T-B1 5 9; b2 B1-B2 20 15',
    electrodes: 'B1 25, B2 10',
    peaks:
      'v(T) 1530.24 0.4548; v(B1) 469.651 0.5865; v(B2) 176.037 2.9671; v(B1,B2) 427.957 0.5653; i(b2) 17.6037 2.9671',
    direct: 'T 7.158055, B1 7.153055, B2 7.138778; b1 1.000000, b2 0.713878',
  },
  {
    title: 'the same with the bond open',
    into: 'T',
    wave: 'subsequent',
    peakA: 25e3,
    windowUs: 6,
    branches: 'b1 T-B1 5 9',
    electrodes: 'B1 25, B2 10',
    peaks: 'v(T) 1557.57 0.4564; v(B1) 624.851 0.9442; v(B1,B2) 624.851 0.9442',
    direct: 'T 25.005000, B1 25.000000, B2 0.000000; b1 1.000000',
  },
  {
    title: 'tower base, entry panel, service entrance and rack in two loops',
    into: 'T',
    wave: 'first negative',
    peakA: 50e3,
    windowUs: 20,
    branches: 'b1 T-P 3 5.4; b2 T-S 26 22; b3 P-S 10 9; b4 P-Q 4 3.2; b5 S-Q 40 14',
    electrodes: 'T 8, P 20, S 12',
    peaks:
      'v(T) 230.165 2.2653; v(P) 193.354 4.0707; v(S) 193.028 4.6855; v(Q) 193.243 4.2758; v(T,P) 102.478 1.9742; ' +
      'v(P,S) 49.2863 2.1347; v(P,Q) 9.16448 2.1345; i(b1) 18.7212 4.5263; i(b2) 7.02395 4.5891; i(b3) 5.95648 4.8153; ' +
      'i(b4) 3.10597 4.6535',
    direct:
      'T 3.872145, P 3.870934, S 3.869223, Q 3.870778; b1 0.403589, b2 0.112393, b3 0.171145, b4 0.038897, b5 -0.038897',
  },
  {
    title: 'buried ring with eight electrodes and a cross tie',
    into: 'D',
    wave: 'first positive',
    peakA: 100e3,
    windowUs: 100,
    branches:
      'd1 D-N1 4 8; r1 N1-N2 2 5.5; r2 N2-N3 2 5.5; r3 N3-N4 2 5.5; r4 N4-N5 2 5.5; r5 N5-N6 2 5.5; r6 N6-N7 2 5.5; ' +
      'r7 N7-N8 2 5.5; r8 N8-N1 2 5.5; x1 N3-N7 4 11',
    electrodes: 'N1 30, N2 35, N3 40, N4 45, N5 50, N6 40, N7 35, N8 30',
    peaks:
      'v(D) 469.245 23.871; v(N1) 463.751 30.576; v(N2) 463.546 31.208; v(N3) 463.453 31.584; v(N4) 463.415 31.778; ' +
      'v(N5) 463.403 31.843; v(N6) 463.412 31.796; v(N7) 463.449 31.605; v(N8) 463.54 31.234; v(N1,N5) 67.7174 18.821; ' +
      'i(r1) 41.3594 31.558; i(r2) 28.116 31.708; i(r3) 15.6792 31.798; i(r4) 5.3811 31.835; i(r5) -3.88696 31.853; ' +
      'i(r6) -15.4722 31.810; i(r7) -27.863 31.719; i(r8) -43.3135 31.556; i(x1) 0.850556 31.672',
    direct:
      'D 4.634083, N1 4.630083, N2 4.629257, N3 4.628696, N4 4.628382, N5 4.628275, N6 4.628353, N7 4.628662, N8 4.629218; d1 1.000000, r1 0.413074, r2 0.280809, r3 0.156597, r4 0.053744, r5 -0.038821, r6 -0.154530, r7 -0.278283, r8 -0.432590, x1 0.008495',
  },
  {
    title: 'entry panel fed by a shield current, a short and a long lead to two electrodes',
    into: 'P',
    wave: '8/20',
    peakA: 10e3,
    windowUs: 60,
    branches: 'b1 P-G 1.3 1; b2 P-H 13 11; b3 G-H 10 9',
    electrodes: 'G 15, H 6',
    peaks:
      'v(P) 43.2396 10.989; v(G) 43.1492 11.151; v(H) 42.8001 11.954; v(P,G) 0.969774 4.8627; i(b1) 6.46547 11.626; ' +
      'i(b2) 3.53249 11.924; i(b3) 3.60093 11.984',
    direct: 'P 4.289182, G 4.288334, H 4.284666; b1 0.652629, b2 0.347371, b3 0.366740',
  },
  {
    title: '30 m of buried wire as six sections with leakage',
    into: 'W0',
    wave: '1.2/50',
    peakA: 30e3,
    windowUs: 20,
    branches: 'w1 W0-W1 6 6; w2 W1-W2 6 6; w3 W2-W3 6 6; w4 W3-W4 6 6; w5 W4-W5 6 6; w6 W5-W6 6 6',
    electrodes: 'W0 60, W1 90, W2 90, W3 90, W4 90, W5 90, W6 90',
    peaks:
      'v(W0) 531.684 0.5165; v(W1) 426.965 0.7739; v(W3) 359.061 2.4057; v(W6) 357.569 3.0418; v(W0,W6) 485.494 0.3750; ' +
      'i(w1) 23.8874 2.5434; i(w6) 3.97299 3.0418',
    direct:
      'W0 12.009704, W1 12.004904, W2 12.000906, W3 11.997707, W4 11.995308, W5 11.993709, W6 11.992910; w1 0.799838, w2 0.666450, w3 0.533107, w4 0.399799, w5 0.266518, w6 0.133255',
  },
];
