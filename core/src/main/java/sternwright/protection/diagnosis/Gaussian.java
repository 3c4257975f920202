package sternwright.protection.diagnosis;

/** A normal distribution of several readings: mean, own errors, and common unknowns that act on them along slopes. */
final class Gaussian {
    private final double[] mean;
    private final double[][] slopes;
    private final double[][] lower;
    private double logDeterminant;

    /**
     * Sets it up.
     *
     * @param mean of the readings
     * @param slopes one row for each unknown, in units of the reading for one of the unknown
     * @param variance own variance of each reading
     */
    Gaussian(double[] mean, double[][] slopes, double[] variance) {
        this.mean = mean;
        this.slopes = slopes;
        int n = mean.length;
        lower = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k <= i; k++) {
                double sum = i == k ? variance[i] : 0;
                for (int u = 0; u < slopes.length; u++) {
                    sum += slopes[u][i] * slopes[u][k] * Unknowns.SPREAD[u] * Unknowns.SPREAD[u];
                }
                for (int m = 0; m < k; m++) {
                    sum -= lower[i][m] * lower[k][m];
                }
                lower[i][k] = i == k ? Math.sqrt(Math.max(sum, 1e-18)) : sum / lower[k][k];
            }
            logDeterminant += 2 * Math.log(lower[i][i]);
        }
    }

    /** Squared distance of readings from the mean, chi-squared with as many degrees of freedom as there are readings. */
    double distance(double[] y) {
        double sum = 0;
        for (double z : whitened(y)) {
            sum += z * z;
        }
        return sum;
    }

    double logDensity(double[] y) {
        return -0.5 * (distance(y) + logDeterminant + mean.length * Math.log(2 * Math.PI));
    }

    private double[] whitened(double[] y) {
        double[] z = new double[mean.length];
        for (int i = 0; i < z.length; i++) {
            z[i] = y[i] - mean[i];
        }
        forward(z);
        return z;
    }

    private void forward(double[] z) {
        for (int i = 0; i < z.length; i++) {
            double sum = z[i];
            for (int k = 0; k < i; k++) {
                sum -= lower[i][k] * z[k];
            }
            z[i] = sum / lower[i][i];
        }
    }

    /**
     * Mean and variance of one more reading once these readings are known.
     *
     * @param y the readings
     * @param nextMean its mean without them
     * @param nextSlopes its slopes along the unknowns
     * @param nextVariance its own variance
     */
    double[] conditional(double[] y, double nextMean, double[] nextSlopes, double nextVariance) {
        double[] cross = new double[mean.length];
        double own = nextVariance;
        for (int u = 0; u < slopes.length; u++) {
            double p = Unknowns.SPREAD[u] * Unknowns.SPREAD[u];
            own += nextSlopes[u] * nextSlopes[u] * p;
            for (int i = 0; i < cross.length; i++) {
                cross[i] += slopes[u][i] * nextSlopes[u] * p;
            }
        }
        forward(cross);
        double[] z = whitened(y);
        double m = nextMean;
        double v = own;
        for (int i = 0; i < cross.length; i++) {
            m += cross[i] * z[i];
            v -= cross[i] * cross[i];
        }
        return new double[] {m, Math.max(v, nextVariance)};
    }
}
