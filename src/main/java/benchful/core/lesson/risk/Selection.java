package benchful.core.lesson.risk;

/** The k-th smallest of many numbers without sorting them all. Method: Hoare, Algorithm 65: Find, CACM 4 (1961). Expected cost O(n). */
final class Selection {

    private Selection() {
    }

    /** @param k from 0; the numbers are put in another order */
    static float smallest(float[] numbers, int k) {
        int low = 0;
        int high = numbers.length - 1;
        while (low < high) {
            int left = low;
            int right = high;
            float pivot = numbers[k];
            while (left <= right) {
                while (numbers[left] < pivot) {
                    left++;
                }
                while (pivot < numbers[right]) {
                    right--;
                }
                if (left <= right) {
                    float swapped = numbers[left];
                    numbers[left++] = numbers[right];
                    numbers[right--] = swapped;
                }
            }
            low = right < k ? left : low;
            high = k < left ? right : high;
        }
        return numbers[k];
    }
}
