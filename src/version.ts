/** Version of this library, as it stands in every plan and in all findings. A test holds it equal to package.json. */
export const libraryVersion = '0.1.0';
