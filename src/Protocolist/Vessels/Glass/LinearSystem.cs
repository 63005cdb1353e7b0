namespace Protocolist.Vessels.Glass;

/// <summary>Small systems of linear equations.</summary>
internal static class LinearSystem
{
    /// <summary>Gauss's elimination with pivoting; the rows are used up.</summary>
    public static double[] Solve(double[][] rows, double[] right)
    {
        var n = right.Length;
        for (var column = 0; column < n; column++)
        {
            var pivot = column;
            for (var row = column + 1; row < n; row++)
            {
                if (Math.Abs(rows[row][column]) > Math.Abs(rows[pivot][column])) pivot = row;
            }

            (rows[column], rows[pivot]) = (rows[pivot], rows[column]);
            (right[column], right[pivot]) = (right[pivot], right[column]);
            for (var below = column + 1; below < n; below++)
            {
                var factor = rows[below][column] / rows[column][column];
                for (var k = column; k < n; k++) rows[below][k] -= factor * rows[column][k];
                right[below] -= factor * right[column];
            }
        }

        var solution = new double[n];
        for (var row = n - 1; row >= 0; row--)
        {
            var known = 0.0;
            for (var k = row + 1; k < n; k++) known += rows[row][k] * solution[k];
            solution[row] = (right[row] - known) / rows[row][row];
        }

        return solution;
    }
}
